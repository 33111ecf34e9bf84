package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopLockTest {
    @TempDir
    Path shop;

    @Test
    void aSecondRunOnTheSameShopIsTurnedAway() {
        assertThatThrownBy(() -> ShopLock.whileHeld(shop, () -> ShopLock.whileHeld(shop, () -> "never")))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.exitCode()).isEqualTo(ExitCode.LOCKED));
        assertThat(ShopLock.<String>whileHeld(shop, () -> "again")).isEqualTo("again");
    }

    @Test
    void aShopFolderThatCannotHoldTheLockIsRefused() {
        assertThatThrownBy(() -> ShopLock.whileHeld(shop.resolve("nowhere"), () -> "never"))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.exitCode()).isEqualTo(ExitCode.CANNOT_WRITE))
                .hasMessageContaining(".lock");
    }
}
