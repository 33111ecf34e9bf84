package benchtrue.tables;

import benchtrue.calendar.Calendar;
import benchtrue.calendar.Call;
import benchtrue.format.Figures;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.FileOut;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;

/**
 * {@code calls.ics}: the calls as whole-day entries for calendar programs (RFC 5545), on the next day that the shop is at work.
 * An entry keeps its key from night to night, so that a later file replaces it. No customer is named.
 */
final class CallsFile {
    static final String NAME = "calls.ics";

    /** Longest line in octets, its end left out (RFC 5545, section 3.1). */
    private static final int LINE = 75;

    private final Ledger ledger;
    private final Figures figures;

    CallsFile(Ledger ledger, Figures figures) {
        this.ledger = ledger;
        this.figures = figures;
    }

    /** Writes the file into a folder that exists; the standard knows no calendar without an entry. */
    void write(Calendar calendar, Path folder) throws IOException {
        if (calendar.calls().isEmpty()) {
            return;
        }
        try (Writer out = FileOut.text(folder.resolve(NAME))) {
            line(out, "BEGIN:VCALENDAR");
            line(out, "VERSION:2.0");
            line(out, "PRODID:-//Benchtrue//Calls//EN");
            for (Call call : calendar.calls()) {
                entry(out, call, calendar.callOn());
            }
            line(out, "END:VCALENDAR");
        }
    }

    private void entry(Writer out, Call call, int day) throws IOException {
        String ticket = ledger.tickets().ticket(call.ticket());
        String repairs = ledger.titles(call.repairs());
        String saves = call.saves() > 0 ? "\nA call is worth " + figures.aboutMoney(call.saves()) + "." : "";
        line(out, "BEGIN:VEVENT");
        line(out, "UID:call-" + HexFormat.of().formatHex(ticket.getBytes(StandardCharsets.UTF_8)) + "@benchtrue");
        line(out, "DTSTAMP:" + date(ledger.asOf()) + "T000000Z");
        line(out, "DTSTART;VALUE=DATE:" + date(day));
        line(out, "SUMMARY:" + text("Call about " + ticket + (repairs.isEmpty() ? "" : ": " + repairs)));
        line(out, "DESCRIPTION:" + text(call.why() + "\n" + call.cost() + saves + "\nSay: " + call.say()));
        line(out, "TRANSP:TRANSPARENT");
        line(out, "END:VEVENT");
    }

    private static String date(int day) {
        return DateTimeFormatter.BASIC_ISO_DATE.format(LocalDate.ofEpochDay(day));
    }

    /** Escapes what has a meaning in the format, and drops characters that no text may hold (RFC 5545, section 3.3.11). */
    private static String text(String words) {
        return words.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\n", "\\n")
                .replaceAll("\\p{Cntrl}", "");
    }

    /** Breaks a line where it is too long, between letters. */
    private static void line(Writer out, String line) throws IOException {
        int octets = 0;
        for (int at = 0; at < line.length(); ) {
            String letter = Character.toString(line.codePointAt(at));
            int size = letter.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LINE) {
                out.write("\r\n ");
                octets = 1;
            }
            out.write(letter);
            octets += size;
            at += letter.length();
        }
        out.write("\r\n");
    }
}
