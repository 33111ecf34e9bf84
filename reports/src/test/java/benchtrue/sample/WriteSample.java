package benchtrue.sample;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Writes an invented shop as a complete shop folder, with what is true of it beside its records. */
public final class WriteSample {
    private WriteSample() {}

    /**
     * Writes the shop: {@code shop.toml}, {@code exports/}, {@code price-book/}, {@code datapackage.json}, {@code truth.json}
     * and, for at most 50,000 tickets, {@code truth-lines.csv}.
     *
     * @return what is true of it
     * @throws FileAlreadyExistsException where the folder holds anything
     * @throws IOException where a file can't be written
     */
    public static Truth write(SampleOptions options) throws IOException {
        refuseFull(options.folder());
        World world = fitted(World.of(options));
        BookFiles.write(world);
        Bench bench = new Bench(world);
        Tally tally = new Tally();
        TruthBook truth = new TruthBook(world);
        MonthRows months = new MonthRows(world, bench);
        try (Shelf shelf = Shelf.open(world, tally)) {
            FaultRows faults = new FaultRows(shelf, bench, tally);
            new ShopRun(world, bench).run(new Writer(shelf, faults, months, truth, tally));
            months.close(shelf.time());
        }
        Truth closed = truth.close(tally);
        TruthFiles.write(world, closed);
        DataPackage.write(options.folder());
        return closed;
    }

    private static void refuseFull(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> held = Files.list(folder)) {
                if (held.findAny().isPresent()) {
                    throw new FileAlreadyExistsException(
                            folder.toString(), null, "the folder is not empty: name a new one");
                }
            }
        }
    }

    /** Scales the loads so that the true ones are what was asked for. */
    static World fitted(World world) {
        if (world.options().loads() == Loads.SPREAD) {
            return world;
        }
        TrueLoads have = TrueLoads.of(world);
        double[] loads = world.loads().clone();
        for (int k = 0; k < loads.length; k++) {
            loads[k] *= have.scaleTo(k, wanted(world.options(), k));
        }
        return world.withLoads(loads);
    }

    private static double wanted(SampleOptions options, int type) {
        return type % 2 == 1 ? options.loads().everyOther() : 1;
    }

    /** Hands every visit to the files and to the truth. */
    private record Writer(Shelf shelf, FaultRows faults, MonthRows months, TruthBook truth, Tally tally)
            implements VisitSink {
        @Override
        public void take(Worked worked) throws IOException {
            shelf.take(worked);
            faults.plant(worked);
            worked.sessions().forEach(months::take);
            count(worked);
            truth.take(worked);
        }

        @Override
        public void takeShared(Session session) throws IOException {
            shelf.time().write(session);
            months.take(session);
            tally.add("shared session");
        }

        private void count(Worked worked) {
            Untidiness.count(worked, tally);
        }
    }
}
