package benchtrue.shop;

/** Whether a cost follows the bench hours. */
public enum CostBehaviour {
    FIXED,
    VARIABLE
}
