package benchtrue.command;

import benchtrue.nightly.Night;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;

/** A command on a shop's folder; one that comes to its end has published. */
abstract class ShopCommand implements Callable<Integer> {
    @Mixin
    ShopOption shop;

    @Mixin
    Loudness loudness;

    final Console console;

    ShopCommand(Console console) {
        this.console = console;
    }

    @Override
    public final Integer call() {
        run();
        return ExitCode.PUBLISHED.number();
    }

    abstract void run();

    /** Prints a line, unless the owner asked for none. */
    void say(String line) {
        if (!loudness.quiet()) {
            console.out().println(line);
        }
    }

    /** Writes what adopted books leave for people and for other systems, and says where. */
    void handOut(Settings settings) {
        Night night = new Night(
                NightlyCommand.HANDED_OUT, new QuietProgress(console.err()), console.clock(), Program.version());
        Path folder = night.handOut(shop.folder(), settings, shop.asOf(settings, console));
        say("To print and for your systems: " + folder + "; from the next night on among its results.");
    }
}
