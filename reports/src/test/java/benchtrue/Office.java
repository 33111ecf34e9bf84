package benchtrue;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** LibreOffice without a screen, with a profile of its own, for tests that let it recalculate or edit a workbook. */
public final class Office {
    private static final long MOST_MINUTES = 4;

    /** Recalculates on loading, whatever wrote the file. */
    private static final String ALWAYS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:items xmlns:oor="http://openoffice.org/2001/registry">
            <item oor:path="/org.openoffice.Office.Calc/Formula/Load">\
            <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
            </oor:items>
            """;

    private static final String MODULE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
            <script:module xmlns:script="http://openoffice.org/2000/script" script:name="Edit"\
             script:language="StarBasic">
            Sub Edit(from As String, saved As String)
              Dim hidden(0) As New com.sun.star.beans.PropertyValue
              hidden(0).Name = "Hidden"
              hidden(0).Value = True
              Dim book As Object
              book = StarDesktop.loadComponentFromURL(ConvertToURL(from), "_blank", 0, hidden())
            %s
              book.calculateAll()
              Dim xlsx(0) As New com.sun.star.beans.PropertyValue
              xlsx(0).Name = "FilterName"
              xlsx(0).Value = "Calc MS Excel 2007 XML"
              book.storeToURL(ConvertToURL(saved), xlsx())
              book.close(True)
            End Sub
            </script:module>
            """;

    private static final String LIBRARY = """
            <?xml version="1.0" encoding="UTF-8"?>
            <!DOCTYPE library:library PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "library.dtd">
            <library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard"\
             library:readonly="false" library:passwordprotected="false">
             <library:element library:name="Edit"/>
            </library:library>
            """;

    private final Path folder;

    /** Takes a folder to work in. */
    public Office(Path folder) throws IOException {
        this.folder = Files.createDirectories(folder);
        Path user = Files.createDirectories(folder.resolve("profile/user"));
        Files.writeString(user.resolve("registrymodifications.xcu"), ALWAYS);
    }

    /** Returns the folder where workbooks of the same names stand with every formula worked out again. */
    public Path recalculate(Path... workbooks) throws IOException, InterruptedException {
        Path out = Files.createDirectories(folder.resolve("recalculated"));
        List<String> arguments = new ArrayList<>(List.of("--convert-to", "xlsx", "--outdir", out.toString()));
        for (Path workbook : workbooks) {
            arguments.add(workbook.toString());
        }
        run(arguments);
        return out;
    }

    /** Prints a whole workbook into a file beside what else is made of it. */
    public Path print(Path workbook) throws IOException, InterruptedException {
        run(List.of("--convert-to", "pdf", "--outdir", folder.toString(), workbook.toString()));
        return folder.resolve(workbook.getFileName().toString().replace(".xlsx", ".pdf"));
    }

    /**
     * Edits a workbook as a person would who types into it, and saves it as .xlsx.
     *
     * @param basic statements on {@code book}, the open document
     */
    public void edit(Path workbook, Path saved, String basic) throws IOException, InterruptedException {
        run(List.of("--terminate_after_init"));
        Path library = Files.createDirectories(folder.resolve("profile/user/basic/Standard"));
        Files.writeString(library.resolve("script.xlb"), LIBRARY);
        Files.writeString(library.resolve("Edit.xba"), MODULE.formatted(basic));
        run(List.of("macro:///Standard.Edit.Edit(" + workbook + "," + saved + ")"));
        assertThat(saved).as(log()).exists();
    }

    private void run(List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "soffice", "-env:UserInstallation=" + folder.resolve("profile").toUri(), "--headless", "--norestore"));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("soffice.log").toFile())
                .start();
        boolean ended = process.waitFor(MOST_MINUTES, TimeUnit.MINUTES);
        process.destroy();
        assertThat(ended).as("LibreOffice ended").isTrue();
        assertThat(process.exitValue()).as(log()).isZero();
    }

    private String log() throws IOException {
        return Files.readString(folder.resolve("soffice.log"));
    }
}
