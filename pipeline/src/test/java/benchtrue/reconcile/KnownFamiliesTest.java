package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopFolder;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KnownFamiliesTest {
    @TempDir
    Path folder;

    private ShopFolder shopThatSets(String family) {
        return new ShopFolder(folder)
                .file("shop.toml", "currency = \"EUR\"", "[policy.family." + family + "]", "coverage = 0.7");
    }

    @Test
    void aFamilyOfThePriceBookIsTaken() {
        assertThatCode(() -> shopThatSets("fretwork").reconciled()).doesNotThrowAnyException();
    }

    @Test
    void aFamilyThatThePriceBookLacksIsRefusedWithThoseThatItHas() {
        assertThatThrownBy(() -> shopThatSets("fretwrk").reconciled())
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.SETTINGS))
                .hasMessage(
                        "shop.toml, line 2: found [policy.family.fretwrk], a family that no repair of the price book"
                                + " has. Did you mean \"fretwork\"? Expected one of: fretwork, setup.");
    }

    @Test
    void aFamilyOfAnEarlierPriceBookStopsNoNight() {
        ShopFolder shop = shopThatSets("setup")
                .file(
                        "price-book/2026-02-01.csv",
                        "repair_type,title,family,book_hours,book_labour",
                        "refret,Refret,fretwork,12,1200");
        assertThatCode(() -> shop.reconciled()).doesNotThrowAnyException();
    }
}
