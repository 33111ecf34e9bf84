package benchtrue.shop;

/** Where a quoted line stands, in order of precedence. */
public enum LineState {
    VOID,
    DECLINED,
    CLOSED,
    OPEN;

    public boolean accepted() {
        return this == CLOSED || this == OPEN;
    }
}
