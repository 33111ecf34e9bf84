package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopLockTest {
    @TempDir
    Path shop;

    @Test
    void aSecondRunOnTheSameShopIsTurnedAway() throws IOException {
        try (ShopLock held = ShopLock.take(shop)) {
            assertThat(held).isNotNull();
            assertThatThrownBy(() -> ShopLock.take(shop))
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.exitCode()).isEqualTo(ExitCode.LOCKED));
        }
        ShopLock.take(shop).close();
    }

    @Test
    void aShopFolderThatCannotHoldTheLockIsRefused() {
        assertThatThrownBy(() -> ShopLock.take(shop.resolve("nowhere")))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.exitCode()).isEqualTo(ExitCode.CANNOT_WRITE))
                .hasMessageContaining(".lock");
    }
}
