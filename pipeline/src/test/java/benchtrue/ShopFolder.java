package benchtrue;

import benchtrue.intake.Exports;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Reconcile;
import benchtrue.reconcile.Reconciled;
import benchtrue.reconcile.SetAsideRow;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.Notice;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes a small shop folder by hand: a ticket with a refret and a setup, one book, and what a test adds. */
public final class ShopFolder {
    public static final int AS_OF = (int) LocalDate.of(2026, 11, 1).toEpochDay();
    private final Path shop;

    public ShopFolder(Path shop) {
        this.shop = shop;
        file(
                "exports/tickets.csv",
                "ticket,opened,closed,status,instrument_class",
                "T1,2026-03-02,2026-03-20,closed,flat-top");
        file(
                "exports/quoted-lines.csv",
                "ticket,line,repair_type,quoted_hours,quoted_labour",
                "T1,1,refret,12,1200.00",
                "T1,2,setup,1.5,150.00");
        file("exports/time-log.csv", "entry,ticket,line,technician,work_date,hours", "E1,T1,1,Ada,2026-03-03,6.5");
        file(
                "price-book/2026-01-01.csv",
                "repair_type,title,family,book_hours,book_labour",
                "refret,Refret,fretwork,12,1200",
                "setup,Setup,setup,1.5,150");
    }

    /** Writes a file, CRLF after each line. */
    public ShopFolder file(String name, String... lines) {
        return bytes(name, (String.join("\r\n", lines) + "\r\n").getBytes(StandardCharsets.UTF_8));
    }

    public ShopFolder bytes(String name, byte[] bytes) {
        try {
            Path file = shop.resolve(name);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
            return this;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Takes a file out. */
    public ShopFolder without(String name) {
        try {
            Files.delete(shop.resolve(name));
            return this;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    public Path path() {
        return shop;
    }

    private Settings settings() {
        return new ReadSettings().read(shop);
    }

    /** Returns what reading the folder gives. */
    public Exports exports() {
        return new ReadExports().read(shop, settings());
    }

    /** Returns what the folder's files come to on {@link #AS_OF}. */
    public Reconciled reconciled() {
        return new Reconcile().reconcile(exports(), settings(), AS_OF);
    }

    public static List<SetAsideRow> setAside(Reconciled result) {
        List<SetAsideRow> rows = new ArrayList<>();
        result.setAside().tables().forEach(table -> result.setAside().forEach(table, rows::add));
        return rows;
    }

    public static Optional<Notice> notice(Reconciled result, String code) {
        return result.notices().stream()
                .filter(notice -> notice.code().equals(code))
                .findFirst();
    }
}
