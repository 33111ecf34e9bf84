package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.Hours;
import benchtrue.shop.LineState;
import benchtrue.shop.Outcome;
import benchtrue.shop.QuoteBasis;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.TicketStatus;

/** What the quote alone says about each line, before any hours: one value a line. */
final class LineFacts {
    /** A quote further from the book, on the log scale, is taken to be a slip as far as expectation goes. */
    private static final double LARGEST_RATIO = 1.5;

    final int[] starts;
    final int[] ticket;
    final int[] type;
    final byte[] state;
    final long[] bookSecondsThen;
    /** The quote against today's book in hours, NaN without a book entry. */
    final double[] todayHours;
    /** Hours that expectation starts from: today's book, else the quote, else one. */
    final double[] baseHours;

    /** The quote against today's book in hours, else the quote, else one: what a share by the quote goes by. */
    final double[] quoteHours;

    final int[] cell;
    /** Log of the quote over the book on the day of the quote; 0 where the line has no quote of its own. */
    final double[] quoteRatio;

    final boolean[] quoteFromBook;
    /** Whether hours on the ticket as a whole may be split to the line. */
    final boolean[] takesHours;
    /** Whether the line is an ordinary closed job, as far as the quote can say. */
    final boolean[] ordinary;

    private final Ledger ledger;
    private final BookHours books;
    private final Returns returns;
    private final Cells cells;

    LineFacts(Ledger ledger, BookHours books, Returns returns, Cells cells, int[] starts) {
        this.ledger = ledger;
        this.books = books;
        this.returns = returns;
        this.cells = cells;
        this.starts = starts;
        int size = ledger.lines().size();
        ticket = new int[size];
        type = new int[size];
        state = new byte[size];
        bookSecondsThen = new long[size];
        todayHours = new double[size];
        baseHours = new double[size];
        quoteHours = new double[size];
        cell = new int[size];
        quoteRatio = new double[size];
        quoteFromBook = new boolean[size];
        takesHours = new boolean[size];
        ordinary = new boolean[size];
        for (int line = 0; line < size; line++) {
            read(line);
        }
        for (int ticket = 0; ticket < ledger.tickets().size(); ticket++) {
            chooseTakers(ticket);
        }
    }

    boolean accepted(int line) {
        return state[line] == LineState.CLOSED.ordinal() || state[line] == LineState.OPEN.ordinal();
    }

    boolean closed(int line) {
        return state[line] == LineState.CLOSED.ordinal();
    }

    /** Returns whether a ticket has an ordinary closed line of a cell. */
    boolean ordinary(int onTicket, int ofCell) {
        for (int line = starts[onTicket]; line < starts[onTicket + 1]; line++) {
            if (ordinary[line] && cell[line] == ofCell) {
                return true;
            }
        }
        return false;
    }

    private void read(int line) {
        QuotedLines lines = ledger.lines();
        ticket[line] = lines.ticket(line);
        type[line] = lines.repairType(line);
        state[line] = (byte) state(line).ordinal();
        int day = ledger.quotedOn(line);
        long then = books.seconds(type[line], ticket[line], day);
        long today = books.secondsToday(type[line], ticket[line]);
        boolean inBook = Absent.has(then) && Absent.has(today);
        boolean quoted = lines.judgedSeconds(line) > 0;
        long judged = quoted || !inBook ? Math.max(0, lines.judgedSeconds(line)) : then;
        quoteFromBook[line] = inBook && !quoted;
        bookSecondsThen[line] = then;
        todayHours[line] = inBook ? Hours.of(judged) * today / then : Double.NaN;
        cell[line] = cell(line, inBook, judged);
        boolean ownQuote = cell[line] < cells.types() && quoted && !shareOfPackage(line);
        baseHours[line] = inBook ? Hours.of(today) : judged == 0 ? 1 : Hours.of(judged);
        quoteHours[line] = inBook ? todayHours[line] : baseHours[line];
        quoteRatio[line] = inBook && ownQuote ? bounded(StrictMath.log(judged / (double) then)) : 0;
        ordinary[line] = closed(line) && inBook && isOrdinary(line);
    }

    private static double bounded(double ratio) {
        return Math.max(-LARGEST_RATIO, Math.min(LARGEST_RATIO, ratio));
    }

    private boolean isOrdinary(int line) {
        ChargeKind kind = ledger.lines().chargeKind(line);
        return cell[line] < cells.types()
                && (kind == ChargeKind.REPAIR || kind == ChargeKind.PACKAGE)
                && !shareOfPackage(line)
                && ledger.lines().quoteBasis(line) != QuoteBasis.TIME;
    }

    /** Whether a line is of a package quoted in one figure: the figure speaks for all its lines and is no line's own. */
    private boolean shareOfPackage(int line) {
        QuotedLines lines = ledger.lines();
        if (lines.chargeKind(line) != ChargeKind.PACKAGE) {
            return false;
        }
        for (int other = starts[ticket[line]]; other < starts[ticket[line] + 1]; other++) {
            if (lines.chargeKind(other) == ChargeKind.PACKAGE && lines.judgedSeconds(other) <= 0) {
                return true;
            }
        }
        return false;
    }

    private LineState state(int line) {
        TicketStatus status = ledger.tickets().status(ticket[line]);
        if (status == TicketStatus.VOID) {
            return LineState.VOID;
        }
        if (ledger.lines().outcome(line) == Outcome.DECLINED) {
            return LineState.DECLINED;
        }
        return status == TicketStatus.CLOSED ? LineState.CLOSED : LineState.OPEN;
    }

    private int cell(int line, boolean inBook, long judgedSeconds) {
        if (returns.kind(line) != ReturnKind.NONE) {
            return cells.rework();
        }
        ChargeKind kind = ledger.lines().chargeKind(line);
        if (!isBenchWork(kind)) {
            return cells.noWorkCharge();
        }
        if (inBook) {
            return type[line];
        }
        if (judgedSeconds == 0) {
            return cells.withoutQuote();
        }
        return switch (kind) {
            case MINIMUM -> cells.minimum();
            case EVALUATION -> cells.evaluation();
            default -> type[line];
        };
    }

    /** Surcharges, storage and work sent out take bench hours only where nothing else on the ticket can. */
    private void chooseTakers(int ticket) {
        boolean any = false;
        for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
            takesHours[line] = accepted(line) && isBenchWork(ledger.lines().chargeKind(line));
            any |= takesHours[line];
        }
        for (int line = starts[ticket]; line < starts[ticket + 1] && !any; line++) {
            takesHours[line] = accepted(line);
        }
    }

    private static boolean isBenchWork(ChargeKind kind) {
        return kind != ChargeKind.RUSH && kind != ChargeKind.STORAGE && kind != ChargeKind.OUTSIDE_WORK;
    }
}
