package benchtrue.shop;

/**
 * Why a run stops before anything is published. The message is for the owner: it names file, line, column, what was found,
 * what was expected and what to do, as far as they apply.
 */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final ExitCode exitCode;

    /** Takes how the run ends and the words for the owner. */
    public Refusal(ExitCode exitCode, String message) {
        super(message);
        this.exitCode = exitCode;
    }

    /** Takes how the run ends, the words for the owner and what lies behind. */
    public Refusal(ExitCode exitCode, String message, Throwable cause) {
        super(message, cause);
        this.exitCode = exitCode;
    }

    /** Returns how the run ends. */
    public ExitCode exitCode() {
        return exitCode;
    }
}
