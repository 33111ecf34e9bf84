package benchtrue.shop;

/** What was drawn or bought for a ticket. */
public enum PartKind {
    PART,
    SUPPLY,
    OUTSIDE_WORK
}
