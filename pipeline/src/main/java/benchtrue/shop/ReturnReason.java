package benchtrue.shop;

/** Why an instrument came back. */
public enum ReturnReason {
    SETTLING,
    OUR_FAULT,
    PART,
    NEW_DAMAGE
}
