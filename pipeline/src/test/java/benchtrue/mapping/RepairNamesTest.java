package benchtrue.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepairNamesTest {
    @ParameterizedTest
    @CsvSource({
        "Setup,set-up",
        "Set up,SETUP",
        "Neck reset,reset neck",
        "'nut, bone',Bone nut",
        "Neck reset,Neck rest",
        "Refret,refrett",
        "Bundstabe,Bundst\u00e4be",
        "Schlussl\u00f6sung,Schlu\u00dfloesung",
        "Pickup swap,PU swap",
        "Bridge reglue,brdg reglue",
        "Bone nut,bone nuts"
    })
    void spellingsOfOneRepairAreAlike(String left, String right) {
        assertThat(RepairNames.likeness(left, right)).isGreaterThanOrEqualTo(RepairNames.ALIKE);
        assertThat(RepairNames.likeness(right, left)).isGreaterThanOrEqualTo(RepairNames.ALIKE);
    }

    @ParameterizedTest
    @CsvSource({
        "Refret,Partial refret",
        "6-string setup,12-string setup",
        "Refret,Defret",
        "Neck reset,Neck refinish",
        "Nut,Nut slot fill",
        "Setup,Refret",
        "Bass setup,Guitar setup",
        "Neck reset,Neck refit"
    })
    void otherRepairsAreNot(String left, String right) {
        assertThat(RepairNames.likeness(left, right)).isLessThan(RepairNames.ALIKE);
        assertThat(RepairNames.likeness(right, left)).isLessThan(RepairNames.ALIKE);
    }
}
