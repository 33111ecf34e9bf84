package benchtrue.findings;

import java.util.List;

/**
 * What sets some jobs of a repair apart from its others (methods, section 14). Where it lies with people and figures about them
 * are off, its value is empty, its jobs are 0 and its figures are not known.
 *
 * @param repairType code of the repair type
 * @param kind what sort of cause
 * @param value which jobs: a class, a trait, a person, a payer, a key of a repair type, or words; empty where the kind says all
 * @param label the same in words that follow "jobs"
 * @param jobs judged jobs with the cause
 * @param of judged jobs of the repair
 * @param size hours per quoted hour of these jobs over those of the others, all else alike
 * @param sizeLower lower end of its 90 % interval
 * @param sizeUpper upper end
 * @param loadFactor hours per quoted hour of these jobs
 * @param lower lower end of its 90 % interval
 * @param upper upper end
 * @param adjustedP Benjamini-Hochberg adjusted p over all repairs and causes
 * @param annualEffect money a year that these jobs take beyond the others' hours, ten-thousandths
 * @param annualLower lower end of its 90 % interval
 * @param annualUpper upper end
 * @param remedy what follows from it, in words
 * @param groups the repair's jobs in groups by the cause, its own first; none where it is not told
 */
public record Cause(
        int repairType,
        Kind kind,
        String value,
        String label,
        int jobs,
        int of,
        double size,
        double sizeLower,
        double sizeUpper,
        double loadFactor,
        double lower,
        double upper,
        double adjustedP,
        long annualEffect,
        long annualLower,
        long annualUpper,
        String remedy,
        List<Group> groups) {
    public Cause {
        groups = List.copyOf(groups);
    }

    /**
     * Some jobs of a repair.
     *
     * @param label which, in words
     * @param jobs how many
     * @param loadFactor hours per quoted hour
     * @param lower lower end of its 90 % interval
     * @param upper upper end
     */
    public record Group(String label, int jobs, double loadFactor, double lower, double upper) {}

    /** What sort of cause, and what follows from it. */
    public enum Kind {
        /** A class of instrument. */
        INSTRUMENT_CLASS("a line of its own for them, the others' price stays"),
        /** A trait of the instrument. */
        TRAIT("a line of its own for them, the others' price stays"),
        /** What else the first look can tell: how old the instrument is. */
        CONDITION("a line of its own for them, the others' price stays"),
        /** How the quote stands to the book. */
        PRICE_LEVEL("how these are quoted, not the book"),
        /** Who wrote the quote. */
        QUOTE_WRITER("how these are quoted, not the book"),
        /** Who did the work. */
        TECHNICIAN("training, tools or who gets the job, not the price"),
        /** One of the two before, while figures about people are off. */
        FEW_HANDS("training, tools, who gets such jobs or how they are quoted, not the price"),
        /** When the job came in. */
        PERIOD("watch it, the price stays"),
        /** Who pays. */
        PAYER("what is agreed with them, the others' price stays"),
        /** Another repair on the same ticket. */
        PAIRING("ask for both together, the others' price stays"),
        /** An instrument that was here before. */
        RETURNING("look at it before it is quoted again, the others' price stays"),
        /** None of these: the jobs are alike in it. */
        SPREAD("the price"),
        /** Too few jobs have hours of their own. */
        UNKNOWN("log hours to the line they belong to");

        private final String remedy;

        Kind(String remedy) {
            this.remedy = remedy;
        }

        /** Returns what follows from it, in words. */
        String remedy() {
            return remedy;
        }

        /** Returns whether it is a person's. */
        boolean personal() {
            return this == QUOTE_WRITER || this == TECHNICIAN;
        }
    }
}
