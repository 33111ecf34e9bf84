package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The installation archive and its launcher; the build runs this after it has packed the archive. */
class InstallationIT {
    private static final Instant BUILT = Instant.parse("2026-01-01T00:00:00Z");

    @TempDir
    Path folder;

    private static Set<String> libraries(Stream<String> names) {
        return names.map(name -> name.replaceAll("-\\d.*", ""))
                .filter(name -> !name.equals("benchtrue-pipeline"))
                .collect(Collectors.toSet());
    }

    @Test
    void theArchiveHoldsWhatAnInstallationNeedsUnderFixedTimes() throws IOException {
        List<TarArchiveEntry> entries = Installed.entries();
        assertThat(entries)
                .allSatisfy(entry -> assertThat(entry.getLastModifiedTime().toInstant())
                        .as(entry.getName())
                        .isEqualTo(BUILT));
        assertThat(entries.stream().map(entry -> entry.getName().replaceFirst("^[^/]*/", "")))
                .contains(
                        "benchtrue.jar",
                        "LICENSE",
                        "INSTALL.txt",
                        "bin/benchtrue",
                        "bin/benchtrue.cmd",
                        "licences/OFL-1.1.txt",
                        "share/man/man1/benchtrue.1",
                        "share/bash-completion/completions/benchtrue",
                        "share/systemd/benchtrue@.service",
                        "share/systemd/benchtrue@.timer",
                        "sample-exports/shop.toml");
    }

    @Test
    void whoUnpacksItRunsTheMainJobOnTheInventedShopAtOnce() throws Exception {
        Installed installed = Installed.in(folder);
        Path shop = installed.home().resolve("sample-exports");
        Installed.Ended ended = installed.run(
                Map.of(
                        "PATH",
                        "/usr/bin:/bin",
                        "JAVA_HOME",
                        System.getProperty("java.home"),
                        "HOME",
                        folder.toString()),
                "nightly",
                "--shop",
                shop.toString(),
                "--as-of",
                "2026-10-31");
        assertThat(ended.code()).as(ended.err()).isZero();
        assertThat(shop.resolve("out/latest/review.html")).isNotEmptyFile();
        assertThat(shop.resolve("truth.json")).doesNotExist();
    }

    @Test
    void everyLibraryStandsInTheListOfLicences() throws IOException {
        Installed installed = Installed.in(folder);
        List<String> rows = Files.readAllLines(installed.home().resolve("licences/third-party.txt")).stream()
                .filter(line -> line.matches("\\S+ {2,}\\S.*|\\S{31} \\S.*"))
                .toList();
        try (Stream<Path> jars = Files.list(installed.home().resolve("lib"))) {
            assertThat(libraries(rows.stream().map(row -> row.split(" +")[0])))
                    .isEqualTo(libraries(jars.map(jar -> jar.getFileName().toString())));
        }
        for (String row : rows) {
            String licence = row.split(" +")[1];
            Path text = licence.equals("Apache-2.0")
                    ? installed.home().resolve("LICENSE")
                    : installed.home().resolve("licences/" + licence.replace("-or-later", "") + ".txt");
            assertThat(text).as(row).isNotEmptyFile();
        }
    }

    @Test
    void withoutAJavaThatIsNewEnoughTheLauncherSaysWhatItFound() throws Exception {
        Installed installed = Installed.in(folder);
        Path old = Files.createDirectories(folder.resolve("old/bin")).resolve("java");
        Files.writeString(old, "#!/bin/sh\necho 'openjdk version \"11.0.2\" 2019-01-15' >&2\n", StandardCharsets.UTF_8);
        Files.setPosixFilePermissions(old, PosixFilePermissions.fromString("rwxr-xr-x"));
        Path tools = Files.createDirectories(folder.resolve("tools"));
        for (String tool : List.of("sh", "sed", "readlink")) {
            Path found = Stream.of("/bin", "/usr/bin")
                    .map(bin -> Path.of(bin, tool))
                    .filter(Files::exists)
                    .findFirst()
                    .orElseThrow();
            Files.copy(found, tools.resolve(tool), StandardCopyOption.COPY_ATTRIBUTES);
        }
        Installed.Ended ended = installed.run(
                Map.of(
                        "PATH",
                        tools.toString(),
                        "JAVA_HOME",
                        old.getParent().getParent().toString()),
                "--version");
        assertThat(ended.code()).isEqualTo(69);
        assertThat(ended.err()).contains("error 69: Found no Java 17 or newer.", "old/bin/java is Java 11");
        assertThat(installed.run(Map.of("PATH", tools.toString()), "--version").code())
                .isEqualTo(69);
    }

    /** A Java that says how it was called. */
    private Path javaThatTells() throws IOException {
        Path home = folder.resolve("java");
        Path java = Files.createDirectories(home.resolve("bin")).resolve("java");
        Files.writeString(home.resolve("release"), "JAVA_VERSION=\"21.0.4\"\n", StandardCharsets.UTF_8);
        Files.writeString(java, "#!/bin/sh\necho \"$@\"\n", StandardCharsets.UTF_8);
        Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
        return home;
    }

    private Map<String, String> environment(Path java, String options) {
        return Map.of("PATH", "/usr/bin:/bin", "JAVA_HOME", java.toString(), "BENCHTRUE_OPTS", options);
    }

    @Test
    void theLauncherHandsOnOptionsAndArgumentsAndLeavesACollectorToTheCaller() throws Exception {
        Installed installed = Installed.in(folder);
        Path java = javaThatTells();
        Installed.Ended own = installed.run(environment(java, "-Xmx6g"), "nightly", "--shop", "a shop");
        assertThat(own.code()).as(own.err()).isZero();
        assertThat(own.out())
                .contains("-XX:+UseSerialGC")
                .endsWith("-Xmx6g -cp " + installed.home().resolve("benchtrue.jar")
                        + " benchtrue.command.Main nightly --shop a shop\n");
        Installed.Ended chosen = installed.run(environment(java, "-XX:+UseG1GC"), "--help");
        assertThat(chosen.out()).contains("-XX:+UseG1GC").doesNotContain("UseSerialGC");
    }

    @Test
    void onlyALargeShopRunsWithTheSecondCompiler() throws Exception {
        Installed installed = Installed.in(folder);
        Path java = javaThatTells();
        Path exports = Files.createDirectories(folder.resolve("shop/exports"));
        Files.writeString(exports.resolve("tickets.csv"), "ticket\n", StandardCharsets.UTF_8);
        assertThat(installed
                        .run(environment(java, ""), "nightly", "--shop=shop")
                        .out())
                .contains("TieredStopAtLevel=1");
        Files.write(exports.resolve("time-log.csv"), new byte[70_000_000]);
        assertThat(installed
                        .run(environment(java, ""), "breakdown", "--shop", "shop")
                        .out())
                .contains("Tier4InvocationThreshold")
                .doesNotContain("TieredStopAtLevel");
        assertThat(installed
                        .run(environment(java, ""), "nightly", "--shop", "shop")
                        .out())
                .contains("TieredStopAtLevel=1");
        Files.write(exports.resolve("parts-usage.csv"), new byte[180_000_000]);
        assertThat(installed
                        .run(environment(java, ""), "nightly", "--shop", "shop")
                        .out())
                .doesNotContain("Tier");
        assertThat(installed.run(environment(java, ""), "--help").out()).contains("TieredStopAtLevel=1");
    }

    @Test
    void theUnitsAreUnderstoodBySystemd() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/systemd-analyze")), "systemd is installed");
        Installed installed = Installed.in(folder);
        Path units = installed.home().resolve("share/systemd");
        for (String name : List.of("benchtrue@", "benchtrue-digest@", "benchtrue-alarm@")) {
            Path service = units.resolve(name + ".service");
            String text = Files.readString(service)
                    .replace("/opt/benchtrue", installed.home().toString());
            Files.writeString(service, text, StandardCharsets.UTF_8);
        }
        Installed.Ended ended = Installed.run(
                folder,
                Map.of("PATH", "/usr/bin:/bin", "SYSTEMD_UNIT_PATH", units + ":"),
                List.of(
                        "/usr/bin/systemd-analyze",
                        "verify",
                        "--man=no",
                        units.resolve("benchtrue@main.service").toString(),
                        units.resolve("benchtrue-digest@main.service").toString(),
                        units.resolve("benchtrue-alarm@main.service").toString(),
                        units.resolve("benchtrue@main.timer").toString()));
        assertThat(ended.out() + ended.err()).isEmpty();
        assertThat(ended.code()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"digest | What changed", "alarm | The night ended without results"})
    void theMachinesOwnMailTellsOfTheNight(String what, String words) throws Exception {
        Installed installed = Installed.in(folder);
        Path result = Files.createDirectories(folder.resolve("shop/out/2026-10-31"));
        Files.writeString(result.resolve("digest.txt"), "What changed since yesterday", StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("shop/out/latest.txt"), "2026-10-31\n", StandardCharsets.UTF_8);
        Path sendmail = Files.writeString(folder.resolve("sendmail"), "#!/bin/sh\ncat\n", StandardCharsets.UTF_8);
        assertThat(sendmail.toFile().setExecutable(true)).isTrue();
        List<String> command = List.of(
                installed.home().resolve("share/mail/tell").toString(),
                what,
                folder.resolve("shop").toString());
        Map<String, String> silent = Map.of("PATH", "/usr/bin:/bin", "SENDMAIL", sendmail.toString());
        assertThat(Installed.run(folder, silent, command).out()).isEmpty();
        Map<String, String> told = new HashMap<>(silent);
        told.put("BENCHTRUE_MAIL_TO", "owner@shop.example");
        assertThat(Installed.run(folder, told, command).out())
                .startsWith("To: owner@shop.example\n")
                .contains(words);
    }

    @Test
    void whatIsPackedCanBeReadByEverybodyWhateverBuiltIt() throws IOException {
        assertThat(Installed.entries())
                .allSatisfy(entry ->
                        assertThat(entry.getMode() & 0777).as(entry.getName()).isIn(0644, 0755));
    }
}
