package benchtrue.intake.dialects;

/** A file that looked as the data contract writes it has something that only the whole file can tell. */
public final class LookAgain extends RuntimeException {
    private static final long serialVersionUID = 1;

    public LookAgain() {
        super("a file has to be looked at whole", null, false, false);
    }
}
