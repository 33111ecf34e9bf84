package benchtrue.hours;

import java.util.Arrays;

/**
 * The parameters behind the {@link Effects}: shop, family, cell, slope of the quote, class, writer, technician, trait, trait
 * within a family, and the fixed time of a visit. All but shop, slope and visit are random effects: they lean on zero as
 * strongly as their own scatter says.
 */
final class Parameters {
    /** Blocks of random effects, in the order of their parameters. */
    enum Block {
        FAMILY,
        TYPE,
        SLOPE_OF_TYPE,
        CLASS,
        WRITER,
        TECHNICIAN,
        TRAIT,
        TRAIT_IN_FAMILY
    }

    private static final double FIRST_SCATTER = 0.1;
    private static final double SLOPE_GUESS = 0.5;
    private static final double SHOP_PRECISION = 0.01;
    private static final double SLOPE_PRECISION = 4;
    private static final double GROUP_PRECISION = 1;
    /** So strongly does a parameter lean on its mean that it is left out. */
    private static final double LEFT_OUT = 1e12;

    final int size;
    final int shop;
    final int slope;
    final int visit;
    /** First parameter of each block, and the end of the last. */
    final int[] begin = new int[Block.values().length + 1];

    final double[] precision;
    final double[] centre;
    private final SplitData data;
    private final int technicians;
    private final int families;

    Parameters(SplitData data, int technicians) {
        this.data = data;
        this.technicians = technicians;
        families = data.cells.families();
        int types = data.cells.size();
        int traits = data.traits.traits.size();
        int[] sizes = {
            families,
            types,
            types,
            data.traits.classes.size(),
            data.traits.writers.size(),
            technicians,
            traits,
            traits * families
        };
        for (int block = 0; block < sizes.length; block++) {
            begin[block + 1] = begin[block] + sizes[block];
        }
        shop = begin[sizes.length];
        slope = shop + 1;
        visit = shop + 2;
        size = shop + 3;
        centre = new double[size];
        centre[slope] = SLOPE_GUESS;
        precision = new double[size];
        Arrays.fill(precision, 1 / (FIRST_SCATTER * FIRST_SCATTER));
        precision[shop] = SHOP_PRECISION;
        precision[slope] = SLOPE_PRECISION;
        precision[visit] = LEFT_OUT;
        // Lines that are no job of a type are too unlike each other to lean on a common scatter.
        for (int cell = data.cells.types(); cell < data.cells.size(); cell++) {
            precision[of(Block.TYPE, cell)] = GROUP_PRECISION;
        }
    }

    void letVisitIn() {
        precision[visit] = SHOP_PRECISION;
    }

    boolean visitIsIn() {
        return precision[visit] < LEFT_OUT;
    }

    int of(Block block, int level) {
        return begin[block.ordinal()] + level;
    }

    void write(double[] parameters, Effects into) {
        for (int cell = 0; cell < into.cell.length; cell++) {
            into.cell[cell] = parameters[shop]
                    + parameters[of(Block.FAMILY, data.cells.family(cell))]
                    + parameters[of(Block.TYPE, cell)];
            into.slope[cell] = parameters[slope] + parameters[of(Block.SLOPE_OF_TYPE, cell)];
        }
        System.arraycopy(parameters, of(Block.CLASS, 0), into.classes, 0, data.traits.classes.size());
        System.arraycopy(parameters, of(Block.WRITER, 0), into.writer, 0, data.traits.writers.size());
        System.arraycopy(parameters, of(Block.TECHNICIAN, 0), into.technician, 0, technicians);
        for (int set = 0; set < data.traits.sets.size(); set++) {
            for (int family = 0; family < families; family++) {
                double sum = 0;
                for (int trait : data.traits.sets.get(set)) {
                    sum += parameters[of(Block.TRAIT, trait)] + parameters[inFamily(trait, family)];
                }
                into.traits[set * families + family] = sum;
            }
        }
    }

    /** Adds effects' scores up to parameters' scores, less the pull of what they lean on. */
    double[] score(Effects scores, double visitScore, double[] parameters) {
        double[] sums = sum(scores, visitScore);
        for (int i = 0; i < size; i++) {
            sums[i] -= precision[i] * (parameters[i] - centre[i]);
        }
        return sums;
    }

    /** Adds effects' scores up to parameters' scores. */
    double[] sum(Effects scores, double visitScore) {
        double[] sums = new double[size];
        for (int cell = 0; cell < scores.cell.length; cell++) {
            sums[shop] += scores.cell[cell];
            sums[of(Block.FAMILY, data.cells.family(cell))] += scores.cell[cell];
            sums[of(Block.TYPE, cell)] += scores.cell[cell];
            sums[slope] += scores.slope[cell];
            sums[of(Block.SLOPE_OF_TYPE, cell)] += scores.slope[cell];
        }
        System.arraycopy(scores.classes, 0, sums, of(Block.CLASS, 0), data.traits.classes.size());
        System.arraycopy(scores.writer, 0, sums, of(Block.WRITER, 0), data.traits.writers.size());
        System.arraycopy(scores.technician, 0, sums, of(Block.TECHNICIAN, 0), technicians);
        for (int set = 0; set < data.traits.sets.size(); set++) {
            for (int trait : data.traits.sets.get(set)) {
                for (int family = 0; family < families; family++) {
                    sums[of(Block.TRAIT, trait)] += scores.traits[set * families + family];
                    sums[inFamily(trait, family)] += scores.traits[set * families + family];
                }
            }
        }
        sums[visit] = visitScore;
        return sums;
    }

    int inFamily(int trait, int family) {
        return of(Block.TRAIT_IN_FAMILY, trait * families + family);
    }
}
