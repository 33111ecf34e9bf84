package benchtrue.sample;

import java.util.Set;

/** A trait of an instrument and what it multiplies the bench hours of some families by. */
enum Trait {
    BOUND_BOARD("bound-board", 0.18, 1.14, Set.of("fretwork")),
    TWELVE_STRING("twelve-string", 0.12, 1.30, Set.of("setup", "fretwork", "fitting")),
    PRIOR_REPAIR("prior-repair", 0.15, 1.18, Set.of("structural", "finish", "fretwork")),
    HIDE_GLUE_JOINT("hide-glue-joint", 0.12, 1.10, Set.of("structural")),
    LACQUER_FINISH("lacquer-finish", 0.20, 1.12, Set.of("finish")),
    LEFT_HANDED("left-handed", 0.07, 1.00, Set.of());

    private static final Set<String> TWELVE_STRINGS = Set.of("flat-top", "solid-body");

    private final String word;
    private final double share;
    private final double effect;
    private final Set<String> families;

    Trait(String word, double share, double effect, Set<String> families) {
        this.word = word;
        this.share = share;
        this.effect = effect;
        this.families = families;
    }

    String word() {
        return word;
    }

    double share() {
        return share;
    }

    double effect() {
        return effect;
    }

    Set<String> families() {
        return families;
    }

    /** Returns whether an instrument of a class can have this trait. */
    boolean suits(InstrumentClass instrument) {
        return switch (this) {
            case TWELVE_STRING -> TWELVE_STRINGS.contains(instrument.name());
            case HIDE_GLUE_JOINT -> instrument.acoustic();
            default -> true;
        };
    }

    /** Returns the bit that stands for this trait in a set of traits. */
    int bit() {
        return 1 << ordinal();
    }

    /** Returns the words of a set of traits, joined as the exports want them. */
    static String words(int traits) {
        StringBuilder words = new StringBuilder();
        for (Trait trait : values()) {
            if ((traits & trait.bit()) != 0) {
                words.append(words.isEmpty() ? "" : ";").append(trait.word);
            }
        }
        return words.toString();
    }
}
