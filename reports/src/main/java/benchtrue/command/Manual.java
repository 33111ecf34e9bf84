package benchtrue.command;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page, from the commands that the program runs: what the help says and the page says can't differ. */
final class Manual {
    private static final List<Map.Entry<String, String>> ENVIRONMENT = List.of(
            Map.entry("JAVA_HOME", "Folder of the Java to use, 17 or newer; else the one on the PATH."),
            Map.entry("BENCHTRUE_OPTS", "Options for Java, such as -Xmx6g for a shop of millions of tickets."),
            Map.entry(
                    "BENCHTRUE_CACHE",
                    "Folder for an archive of the program's classes, which the first night leaves for a quicker start of"
                            + " the next ones; set but empty: none. Else CACHE_DIRECTORY, XDG_CACHE_HOME/benchtrue or"
                            + " ~/.cache/benchtrue."),
            Map.entry("NO_COLOR", "Set to anything: no colours."));

    private static final List<Map.Entry<String, String>> FILES = List.of(
            Map.entry("DIR/shop.toml", "Settings; may be missing."),
            Map.entry("DIR/exports/", "The files as the shop's systems wrote them; never changed."),
            Map.entry("DIR/price-book/", "One file a version, named by the day it takes effect."),
            Map.entry("DIR/decisions/", "What was decided on a draft."),
            Map.entry("DIR/close/", "Sealed months."),
            Map.entry("DIR/out/latest/", "The newest result, whole; DIR/out/<date>/ those before."),
            Map.entry("DIR/out/.last/", "How the last run ended, how long its stages took."));

    private static final String EXAMPLE = """
            benchtrue nightly --shop sample-exports --as-of 2026-10-31
            benchtrue verify sample-exports/out/latest
            """;

    private final Roff page = new Roff();

    private Manual() {}

    /** Returns the page of a program with all its commands. */
    static String of(CommandLine line, String version) {
        return new Manual().write(line.getCommandSpec(), version);
    }

    private String write(CommandSpec program, String version) {
        page.title(program.name(), 1, program.name() + " " + version, "User commands");
        String description = String.join(" ", program.usageMessage().description());
        String nameLine = Character.toLowerCase(description.charAt(0)) + description.substring(1);
        page.section("NAME").paragraph(program.name() + " - " + nameLine.replaceAll("\\.$", ""));
        page.section("SYNOPSIS").paragraph(synopsis(program));
        page.section("DESCRIPTION").paragraph(description).paragraph("Every command takes:");
        program.options().forEach(this::option);
        page.section("COMMANDS");
        program.subcommands().values().forEach(command -> command(command.getCommandSpec()));
        page.section("EXIT STATUS");
        program.usageMessage().exitCodeList().forEach(page::term);
        entries("ENVIRONMENT", ENVIRONMENT);
        entries("FILES", FILES);
        page.section("EXAMPLES").example(EXAMPLE);
        return page.toString();
    }

    private void command(CommandSpec command) {
        page.subsection(synopsis(command));
        page.paragraph(String.join(" ", command.usageMessage().description()));
        arguments(command);
    }

    private void arguments(CommandSpec command) {
        for (PositionalParamSpec parameter : command.positionalParameters()) {
            page.term(parameter.paramLabel(), text(parameter));
        }
        command.options().stream()
                .filter(option -> !option.usageHelp() && !option.versionHelp())
                .forEach(this::option);
    }

    private void option(OptionSpec option) {
        String value = option.arity().max() == 0 ? "" : "=" + option.paramLabel();
        page.term(String.join(", ", option.names()) + value, text(option));
    }

    private static String text(ArgSpec argument) {
        String text = String.join(" ", argument.description());
        boolean needed = argument.required() && argument.group() == null; // In a group it is one of several.
        return needed ? text + " Needed." : text;
    }

    private static String synopsis(CommandSpec command) {
        return new Help(command, Help.defaultColorScheme(Ansi.OFF))
                .synopsis(0)
                .replaceAll("\\s+", " ")
                .strip();
    }

    private void entries(String title, List<Map.Entry<String, String>> entries) {
        page.section(title);
        entries.forEach(entry -> page.term(entry.getKey(), entry.getValue()));
    }

    /** Text in the language of manual pages (macros {@code man}, as groff and mandoc read them). */
    static final class Roff {
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
}
