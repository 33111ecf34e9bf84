package benchtrue.hours;

import benchtrue.hours.Parameters.Block;

/** The information that tickets hold about the parameters: x x' / v summed over ticket sums and known lines. */
final class Information {
    private final SplitData data;
    private final Parameters parameters;
    private final Spreads spreads;
    private final TicketSplit split;
    private final double[][] sum;
    private final double[] gradient;
    private final int[] touched;
    private int touches;

    Information(SplitData data, Parameters parameters, Spreads spreads, TicketSplit split) {
        this.data = data;
        this.parameters = parameters;
        this.spreads = spreads;
        this.split = split;
        sum = new double[parameters.size][parameters.size];
        gradient = new double[parameters.size];
        touched = new int[parameters.size];
    }

    /** Adds a ticket that {@link TicketSplit#expect} was just called for. */
    void add(int ticket) {
        int from = data.facts.starts[ticket];
        double perSpread = split.doubt > 0 ? 1 / StrictMath.sqrt(split.doubt) : 0;
        boolean any = false;
        for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
            if (data.role[line] == SplitData.BARE) {
                touch(line, split.mean[line - from] * perSpread);
                any = true;
            }
        }
        if (any) {
            mark(parameters.visit, perSpread);
            flush();
        }
        for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
            if (data.role[line] == SplitData.KNOWN || data.role[line] == SplitData.NAMED) {
                touch(line, 1 / spreads.of(data.facts.cell[line]));
                flush();
            }
        }
    }

    private void touch(int line, double amount) {
        int ticket = data.facts.ticket[line];
        int cell = data.facts.cell[line];
        int family = data.cells.family(cell);
        double ratio = data.facts.quoteRatio[line];
        mark(parameters.shop, amount);
        mark(parameters.of(Block.FAMILY, family), amount);
        mark(parameters.of(Block.TYPE, cell), amount);
        mark(parameters.slope, amount * ratio);
        mark(parameters.of(Block.SLOPE_OF_TYPE, cell), amount * ratio);
        touch(Block.CLASS, data.traits.classOf[ticket], amount);
        touch(Block.WRITER, data.traits.writerOf[ticket], amount);
        float share = data.workers.firstShare[line];
        touch(Block.TECHNICIAN, data.workers.first[line], amount * share);
        touch(Block.TECHNICIAN, data.workers.second[line], amount * (1 - share));
        for (int trait : data.traits.sets.get(data.traits.setOf[ticket])) {
            mark(parameters.of(Block.TRAIT, trait), amount);
            mark(parameters.inFamily(trait, family), amount);
        }
    }

    /** Leaves out the level that stands for what was not recorded. */
    private void touch(Block block, int level, double amount) {
        int parameter = parameters.of(block, level);
        if (parameter < parameters.begin[block.ordinal() + 1]) {
            mark(parameter, amount);
        }
    }

    private void mark(int parameter, double amount) {
        if (amount != 0) {
            if (gradient[parameter] == 0) {
                touched[touches++] = parameter;
            }
            gradient[parameter] += amount;
        }
    }

    private void flush() {
        for (int a = 0; a < touches; a++) {
            double[] row = sum[touched[a]];
            double left = gradient[touched[a]];
            for (int b = 0; b < touches; b++) {
                row[touched[b]] += left * gradient[touched[b]];
            }
        }
        for (int a = 0; a < touches; a++) {
            gradient[touched[a]] = 0;
        }
        touches = 0;
    }

    /** Returns the information of the tickets alone, each counted so many times. */
    double[][] ofTickets(double times) {
        double[][] scaled = new double[sum.length][];
        for (int i = 0; i < sum.length; i++) {
            scaled[i] = sum[i].clone();
            for (int j = 0; j < sum.length; j++) {
                scaled[i][j] *= times;
            }
        }
        return scaled;
    }
}
