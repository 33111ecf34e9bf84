package benchtrue.shop;

/** What the customer said to a quoted line. */
public enum Outcome {
    ACCEPTED,
    DECLINED
}
