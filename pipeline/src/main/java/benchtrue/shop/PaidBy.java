package benchtrue.shop;

/** Who pays for a line. */
public enum PaidBy {
    CUSTOMER,
    TRADE,
    MAKER_WARRANTY,
    GOODWILL,
    HOUSE
}
