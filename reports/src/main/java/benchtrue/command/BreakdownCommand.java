package benchtrue.command;

import benchtrue.breakdown.Breakdown;
import benchtrue.breakdown.Facts;
import benchtrue.breakdown.ParseQuestion;
import benchtrue.breakdown.Question;
import benchtrue.format.Figures;
import benchtrue.nightly.AskedResult;
import benchtrue.settings.AskedQuestion;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Answers a question of the owner's own from a published result. */
@Command(
        name = "breakdown",
        description = {
            "Answers a question of your own from the newest result: jobs and their figures, grouped by what you name. Closed"
                    + " jobs only, unless a condition speaks of state; what is left out is said. A condition is a name, a"
                    + " sign and a value: = is, != is not, < <= > >= before or less and so on, in is one of several with"
                    + " commas between, contains has these letters somewhere. All conditions hold together.",
            "%nExamples:",
            "  --by repair,class --where \"family = fretwork\"",
            "  --by class --across year --where \"repair = neck-reset\" --date closed",
            "  --by month --where \"repair = refret-bound\" --from \"24 months\" --show jobs,each",
            "  --by repair --where \"payer = trade\" --where \"family = setup\" --date closed --from 2026-07-01",
            "  --by repair --where \"repair contains crack\" --where \"taken > 6\" --from 2026-03-21 --jobs",
            "  --by payer --show jobs,labour,cost,margin --sort margin",
            "  --by decade --where \"traits = bound-board\" --show jobs,load,range",
            "  --by family --across payer --where \"payer in trade, house\" --out payers.xlsx%n"
        },
        mixinStandardHelpOptions = true,
        versionProvider = Program.Version.class)
final class BreakdownCommand extends ShopCommand {
    @Option(
            names = "--by",
            paramLabel = "NAMES",
            required = true,
            split = ",",
            description = "What the jobs are grouped by, one to three names with commas between; ? lists them all.")
    private List<String> by;

    @Option(names = "--across", paramLabel = "NAME", defaultValue = "", description = "Which name stands across.")
    private String across;

    @Option(names = "--where", paramLabel = "CONDITION", description = "Which jobs; may be given several times.")
    private List<String> where = new ArrayList<>();

    @Option(
            names = "--from",
            paramLabel = "DATE",
            defaultValue = "",
            description = "First day, such as 2026-03-01, or how far back, such as \"12 months\".")
    private String from;

    @Option(names = "--to", paramLabel = "DATE", defaultValue = "", description = "Last day, such as 2026-06-30.")
    private String to;

    @Option(
            names = "--date",
            paramLabel = "DAY",
            defaultValue = "",
            description =
                    "Which day of a job counts for days, months and years: quoted (where not given), opened or closed.")
    private String date;

    @Option(
            names = "--show",
            paramLabel = "FIGURES",
            split = ",",
            description = "Which figures, with commas between; --by ? lists them all.")
    private List<String> show = new ArrayList<>();

    @Option(
            names = "--sort",
            paramLabel = "FIGURE",
            defaultValue = "",
            description = "The largest of a figure first; \"FIGURE rising\" for the smallest; else by name.")
    private String sort;

    @Option(
            names = "--top",
            paramLabel = "N",
            defaultValue = "0",
            description = "Show so many rows; the others stand together in one.")
    private int top;

    @Option(names = "--jobs", description = "List the jobs behind the answer, each with ticket and line.")
    private boolean jobs;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the answer to a file that ends with .csv, .xlsx, .html or .svg.")
    private Path out;

    BreakdownCommand(Console console) {
        super(console);
    }

    @Override
    void run() {
        if (by.equals(List.of("?"))) {
            KnownNames.lines().forEach(console.out()::println);
            return;
        }
        Settings settings = shop.settings();
        Figures figures = settings.figures();
        AskedResult result = AskedResult.open(shop.folder(), settings, shop.day());
        Question question = new ParseQuestion(asked(), result.asOf(), result.people()).parse();
        Facts facts = Facts.read(
                result.lines(),
                List.of(question),
                jobs ? Facts.Listing.EVERY_JOB : Facts.Listing.GROUPS,
                result.rows());
        List<Breakdown> answers = new ArrayList<>(List.of(facts.answer(question, figures)));
        if (jobs) {
            answers.add(facts.jobs(question, figures));
        }
        if (out != null) {
            new SaveBreakdown(settings, result.asOf()).save(answers, out.toAbsolutePath());
        }
        if (!loudness.quiet()) {
            for (Breakdown answer : answers) {
                new PrintBreakdown(figures).lines(answer).forEach(console.out()::println);
            }
        }
    }

    private AskedQuestion asked() {
        return new AskedQuestion("", by, across, where, from, to, date, show, sort, top, Disclosure.SHOWN, 0);
    }
}
