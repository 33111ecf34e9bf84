package benchtrue.intake.columns;

/** Whether something must be there. */
public enum Need {
    REQUIRED,
    /** Worked out from what else is there where no file says it, and said so. */
    DERIVED,
    OPTIONAL,
    /** Nothing is left out without it. */
    EXTRA
}
