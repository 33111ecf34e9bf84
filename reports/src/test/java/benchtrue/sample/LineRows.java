package benchtrue.sample;

import benchtrue.format.Words;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.Hours;
import benchtrue.shop.Outcome;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuoteBasis;
import java.io.Closeable;
import java.io.IOException;

/** Writes {@code quoted-lines}. */
final class LineRows implements Closeable {
    private static final String HEADER = "ticket,line,repair_type,quoted_hours,quoted_labour,quoted_parts,outcome,"
            + "quoted_on,first_quoted_hours,first_quoted_labour,billed_labour,billed_parts,charge_kind,quote_basis,"
            + "paid_by,rework_of,rework_of_line,return_reason";
    private static final double LATER_FIGURE = 1.25;

    private final World world;
    private final Overlap exports;
    private final Tally tally;
    private final Row row = new Row();

    LineRows(World world, Tally tally) throws IOException {
        this.world = world;
        this.tally = tally;
        this.exports = new Overlap(world, "quoted-lines", HEADER, tally);
    }

    void take(Worked worked) throws IOException {
        int opened = worked.visit().opened();
        for (Line line : worked.lines()) {
            boolean older = exports.inOlder(Absent.has(line.quotedOn()) ? line.quotedOn() : opened);
            if (older) {
                boolean retyped = line.form() == QuoteForm.RETYPED && exports.inBoth(opened);
                long later = retyped ? LineMaker.quote(line.workedSeconds(), 0) : line.quotedSeconds();
                if (later != line.quotedSeconds()) {
                    tally.add("retyped quote");
                }
                String then = row(worked, line, line.quotedSeconds(), History.OLDER_EXPORT);
                exports.write(opened, then, row(worked, line, later, History.AS_OF));
            } else {
                exports.write(row(worked, line, line.quotedSeconds(), History.AS_OF));
            }
        }
    }

    /** Writes a row with a key, a type or a figure that is not what it should be. */
    void writeFaulty(String ticket, String line, String type, String hours) throws IOException {
        row.text(ticket).text(line).text(type).text(hours).text("95").blanks(13);
        exports.write(row.end());
    }

    private String row(Worked worked, Line line, long quoted, int exported) {
        Visit visit = worked.visit();
        Terms terms = line.terms();
        boolean kept = line.form() == QuoteForm.FIRST_KEPT;
        long latest = kept ? LineMaker.quote((long) (quoted * LATER_FIGURE), 0) : quoted;
        long parts = PartRows.chargeCents(world, visit, line);
        row.text(visit.ticket()).number(line.number()).text(world.catalogue().key(line.type()));
        if (line.form() == QuoteForm.BLANK || (latest == 0 && terms.kind() != ChargeKind.PACKAGE)) {
            row.blank();
        } else {
            row.hours(latest);
        }
        row.cents(labour(visit, line, latest)).cents(parts);
        row.text(terms.outcome() == Outcome.ACCEPTED ? "" : Words.of(terms.outcome()))
                .day(line.quotedOn());
        if (kept) {
            row.hours(quoted).cents(labour(visit, line, quoted));
        } else {
            row.blanks(2);
        }
        billed(worked, line, latest, parts, exported);
        row.text(terms.kind() == ChargeKind.REPAIR ? "" : Words.of(terms.kind()))
                .text(terms.basis() == QuoteBasis.FIXED ? "" : Words.of(terms.basis()))
                .text(terms.payer() == PaidBy.CUSTOMER ? "" : Words.of(terms.payer()));
        back(visit.back());
        return row.end();
    }

    private void back(ComeBack back) {
        if (!back.is()) {
            row.blanks(3);
            return;
        }
        row.text(Visit.ticket(back.ticket()));
        if (back.lineKnown()) {
            row.number(back.line());
        } else {
            row.blank();
        }
        row.text(Words.of(back.reason()));
    }

    /** A bill differs from the quote now and then: something off for a friend of the shop. */
    private void billed(Worked worked, Line line, long latest, long parts, int exported) {
        boolean billed =
                worked.closed() <= exported && line.accepted() && worked.visit().index() % 5 == 2;
        if (billed) {
            long labour = labour(worked.visit(), line, latest);
            row.cents(worked.visit().index() % 10 == 2 ? labour - labour / 10 : labour)
                    .cents(parts);
        } else {
            row.blanks(2);
        }
    }

    private long labour(Visit visit, Line line, long seconds) {
        if (visit.back().putsRight()) {
            return 0;
        }
        int day = Absent.has(line.quotedOn()) ? line.quotedOn() : visit.opened();
        long byHours = seconds * world.shopRate(day) * 100 / Hours.SECONDS;
        return switch (line.terms().kind()) {
            case RUSH -> 6_000;
            case STORAGE -> 2_000;
            case EVALUATION -> 4_500;
            case OUTSIDE_WORK -> 0;
            case MINIMUM ->
                StrictMath.max(
                        byHours, 100L * world.catalogue().get(line.type()).leastLabour());
            default ->
                line.form() == QuoteForm.BLANK
                        ? line.bookSeconds() * world.shopRate(day) * 100 / Hours.SECONDS
                        : byHours;
        };
    }

    @Override
    public void close() throws IOException {
        exports.close();
    }
}
