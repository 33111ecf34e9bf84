package benchtrue.command;

/** The command line's entry. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(0);
    }
}
