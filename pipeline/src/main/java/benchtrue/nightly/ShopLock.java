package benchtrue.nightly;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.Supplier;

/**
 * One run at a time on a shop folder. The operating system holds the lock, so that it ends with the process however that
 * ends; the file stays, since deleting it would let two runs lock two files of one name.
 */
final class ShopLock {
    private static final String FILE = ".lock";
    private final FileChannel channel;

    private ShopLock(FileChannel channel) {
        this.channel = channel;
    }

    /** Does some work while nobody else works on the shop folder; refuses where somebody already does. */
    static <T> T whileHeld(Path shop, Supplier<T> work) {
        ShopLock lock = take(shop);
        try {
            return work.get();
        } finally {
            lock.close();
        }
    }

    private static ShopLock take(Path shop) {
        FileChannel channel = open(shop);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return new ShopLock(channel);
            }
        } catch (OverlappingFileLockException held) {
            // Held by this very process: refused below like any other holder.
        } catch (IOException e) {
            close(channel);
            throw cannot(shop, e);
        }
        close(channel);
        throw new Refusal(
                ExitCode.LOCKED,
                "Another run is working on " + shop
                        + ". Its results will be there when it ends; nothing was done here.");
    }

    private static FileChannel open(Path shop) {
        try {
            return FileChannel.open(shop.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException e) {
            throw cannot(shop, e);
        }
    }

    private static Refusal cannot(Path shop, IOException e) {
        return new Refusal(
                ExitCode.CANNOT_WRITE,
                "The lock file " + shop.resolve(FILE) + " can't be written: " + e
                        + ". The user that runs this must own the shop folder.",
                e);
    }

    private static void close(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void close() {
        close(channel);
    }
}
