package benchtrue.command;

import java.util.stream.Collectors;

/** Text in the language of manual pages (macros {@code man}, as groff and mandoc read them). */
final class Roff {
    private final StringBuilder text = new StringBuilder();

    Roff title(String name, int section, String source, String manual) {
        return line(".TH " + quoted(name) + " " + section + " \"\" " + quoted(source) + " " + quoted(manual));
    }

    Roff section(String name) {
        return line(".SH " + quoted(name));
    }

    Roff subsection(String name) {
        return line(".SS " + quoted(name));
    }

    Roff paragraph(String prose) {
        return line(".PP").line(escaped(prose));
    }

    /** A term in bold, and what it means set in beneath or beside it. */
    Roff term(String term, String meaning) {
        return line(".TP").line("\\fB" + escaped(term) + "\\fR").line(escaped(meaning));
    }

    /** Lines that stay as they are. */
    Roff example(String lines) {
        line(".PP").line(".RS 4").line(".nf");
        lines.lines().forEach(line -> line(escaped(line)));
        return line(".fi").line(".RE");
    }

    private Roff line(String line) {
        text.append(line).append('\n');
        return this;
    }

    /** A hyphen is written as a minus, so that what is copied from the page works; no line may begin as a request. */
    private static String escaped(String prose) {
        String plain = prose.replace("\\", "\\e").replace("-", "\\-").replace("'", "\\(aq");
        return plain.lines()
                .map(line -> line.startsWith(".") ? "\\&" + line : line)
                .collect(Collectors.joining("\n"));
    }

    private static String quoted(String argument) {
        return "\"" + escaped(argument).replace("\"", "\\(dq") + "\"";
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
