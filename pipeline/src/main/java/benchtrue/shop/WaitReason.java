package benchtrue.shop;

/** Why an instrument waited; never bench time. */
public enum WaitReason {
    ACCLIMATISING,
    GLUE_CURING,
    FINISH_CURING,
    PARTS,
    OUTSIDE_WORK,
    APPROVAL,
    BENCH,
    PICK_UP
}
