package benchtrue.page;

import java.util.List;

/**
 * Everything on the page, as text ready to be escaped and set.
 *
 * @param head what stands above all
 * @param answers the five answers
 * @param pictures the evidence
 * @param more where pictures that the page leaves out stand; empty where it has all
 * @param answered answers to the owner's standing questions
 * @param hour the months behind the bench hour
 * @param gifts each time something was given away
 * @param repairs the figures, one row a repair type
 * @param jobs the latest jobs behind them
 * @param quotes hours and prices for whoever writes quotes
 * @param calls calls to make, what saves most first
 * @param moreCalls where those left out stand; empty where none is
 * @param open every open ticket, by where it stands
 * @param weeks how long visits take and what to promise
 * @param restorations large visits as wholes
 * @param people figures about people; empty unless the settings ask for them
 * @param balances what was read and where it went
 * @param doubts what was set aside or is doubtful
 * @param restated figures of sealed months that the records now tell otherwise
 * @param words what the words mean that may need it
 * @param cautions what to mind
 */
record ReviewView(
        Head head,
        Answers answers,
        List<Illustration> pictures,
        String more,
        List<Answered> answered,
        HourMonths hour,
        List<GiftList> gifts,
        List<Repair> repairs,
        List<JobList> jobs,
        BookViews.Quotes quotes,
        List<Call> calls,
        String moreCalls,
        Open open,
        Weeks weeks,
        List<Restoration> restorations,
        List<Person> people,
        List<BalanceRow> balances,
        List<Doubt> doubts,
        List<Restated> restated,
        List<Word> words,
        List<Caution> cautions) {

    /**
     * @param title of the page
     * @param first what must be read before all else; empty where nothing must
     * @param summary the finding in one sentence
     * @param basis what it stands on
     * @param missing what can't be told, and why
     * @param before where the review of about a month before stands; empty where none is published
     * @param beforeDay its day
     */
    record Head(
            String title,
            String first,
            String summary,
            String basis,
            List<String> missing,
            String before,
            String beforeDay) {}

    /** The five answers of the first page. */
    record Answers(List<Loss> losses, Changes changes, Gifts gifts, Calls calls, List<Fact> bench) {}

    /**
     * @param label the repair
     * @param href its row
     * @param range money a year
     * @param from where the money is lost
     * @param why reason
     */
    record Loss(String label, String href, String range, String from, String why) {}

    /**
     * @param groups what to change: what is surely wrong in the book first, then what only leans
     * @param held what is held, and why
     * @param rest what stands only in the table below
     */
    record Changes(List<ChangeGroup> groups, List<Held> held, String rest) {}

    /**
     * @param words how sure they are, how many, and what they bring together
     * @param rows the first of them
     */
    record ChangeGroup(String words, List<Change> rows) {}

    /**
     * @param label the repair
     * @param href its row
     * @param hours from and to
     * @param price from and to
     * @param effect what it brings a year
     * @param limited why it is not more; empty where nothing limits it
     */
    record Change(String label, String href, String hours, String price, String effect, String limited) {}

    /**
     * @param because why they are held
     * @param labels the repairs
     */
    record Held(String because, String labels) {}

    /** @param note the span and the rate; a sentence where nothing was given away */
    record Gifts(List<Gift> rows, String note) {}

    /** @param href its rows */
    record Gift(String what, String href, String hours, String money) {}

    /** @param note what stands behind it; a sentence where nobody needs a call */
    record Calls(List<Call> rows, String note) {}

    /**
     * @param id of its row
     * @param saves money likely lost without the call; empty where none is known to be
     * @param why in a sentence
     * @param cost what it costs not to call
     * @param say what to say
     */
    record Call(
            String id,
            String ticket,
            String instrument,
            String repairs,
            String saves,
            String why,
            String cost,
            String say) {}

    /** @param summary how many are open, and where */
    record Open(String summary, List<OpenTicket> rows) {}

    record OpenTicket(
            String ticket,
            String state,
            String since,
            String until,
            String repairs,
            String reason,
            String promise,
            String worth) {}

    /** @param tried what came of such promises on past visits; empty where too little is past */
    record Restoration(
            String by,
            String group,
            String visits,
            String quoted,
            String found,
            String taken,
            String load,
            String finding) {}

    record Weeks(String tried, List<RepairWeeks> rows) {}

    record RepairWeeks(
            String label,
            String visits,
            String middle,
            String most,
            String queue,
            String bench,
            String waits,
            String promise) {}

    /** @param href its rows; empty where it has none */
    record Fact(String name, String href, String value, String note) {}

    /**
     * The months that the bench hour is reckoned over; each ends with a row of their sums.
     *
     * @param span first to last month
     * @param worked by the day worked: hours on jobs, then what they and all else cost
     * @param finished jobs finished, with their hours and money
     */
    record HourMonths(String span, List<Month> worked, List<Month> finished) {}

    record Month(String name, List<String> figures) {}

    /** @param note how many of the times are shown */
    record GiftList(String id, String what, String note, List<Given> rows) {}

    record Given(String ticket, String repair, String hours, String worth) {}

    /**
     * @param id where links land
     * @param wide SVG for a screen or paper
     * @param narrow SVG for a telephone
     * @param href its rows
     */
    record Illustration(String id, String title, String note, String wide, String narrow, String href) {}

    /**
     * The answer to a question of the owner's own.
     *
     * @param id where links land
     * @param names what each row is named by
     * @param headings of its figures
     * @param rows the last is the total
     * @param more how many of the rows are shown; empty where all are
     * @param file that has all; empty where there is none
     * @param pictures one, or none
     */
    record Answered(
            String id,
            String title,
            List<String> notes,
            List<String> names,
            List<String> headings,
            List<AnswerRow> rows,
            String more,
            String file,
            List<Illustration> pictures) {}

    record AnswerRow(List<String> names, List<String> figures) {}

    /** One row of the table of repair types. */
    record Repair(
            String id,
            String label,
            String key,
            String verdict,
            String jobs,
            String quoted,
            String taken,
            String ratio,
            String interval,
            String money,
            String book,
            String proposed,
            String why,
            String held,
            String jobsHref) {}

    /** @param note how many of the jobs are shown */
    record JobList(String id, String label, String note, List<Job> rows) {}

    record Job(String ticket, String day, String quoted, String taken, String known) {}

    record BalanceRow(String name, String read, String terms) {}

    /**
     * @param role what the person did
     * @param name as in the shop's records, in the order of names
     * @param factor hours with this person over hours with the usual mix
     */
    record Person(String role, String name, String jobs, String repairs, String factor, String interval) {}

    /** @param where a file, or the first few places */
    record Doubt(String words, String count, String where) {}

    record Restated(String month, String figure, String sealed, String now, String causes) {}

    record Word(String word, String plain) {}

    record Caution(String about, String text) {}
}
