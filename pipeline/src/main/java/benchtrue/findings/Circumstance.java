package benchtrue.findings;

import benchtrue.findings.Cause.Kind;
import benchtrue.shop.Absent;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * Something that some jobs have and others lack, whatever their repair.
 *
 * @param kind what sort
 * @param value as {@link Cause#value}
 * @param label as {@link Cause#label}
 * @param otherValue value of the jobs without it, where these are as good a group; empty else
 * @param otherLabel words for them
 * @param holds by line, whether the job has it
 * @param modelled by line, what the model of hours already lays to it, as ln
 * @param since first day of a period that lasts until today, {@link Absent#DAY} else
 */
record Circumstance(
        Kind kind,
        String value,
        String label,
        String otherValue,
        String otherLabel,
        IntPredicate holds,
        IntToDoubleFunction modelled,
        int since) {

    private static final IntToDoubleFunction NOTHING = line -> 0;

    /** Takes one whose jobs alone are a group, and which the model of hours does not know. */
    static Circumstance of(Kind kind, String value, String label, IntPredicate holds) {
        return new Circumstance(kind, value, label, "", "", holds, NOTHING, Absent.DAY);
    }

    /** Takes one that the model of hours knows. */
    static Circumstance of(Kind kind, String value, String label, IntPredicate holds, IntToDoubleFunction modelled) {
        return new Circumstance(kind, value, label, "", "", holds, modelled, Absent.DAY);
    }

    /** Takes one without which jobs are as good a group. */
    Circumstance orElse(String itsValue, String itsLabel) {
        return new Circumstance(kind, value, label, itsValue, itsLabel, holds, modelled, since);
    }

    Circumstance since(int day) {
        return new Circumstance(kind, value, label, otherValue, otherLabel, holds, modelled, day);
    }

    /** Returns whether the model of hours lays anything to it. */
    boolean isModelled() {
        return modelled != NOTHING;
    }

    boolean eitherSide() {
        return !otherValue.isEmpty();
    }

    /** Returns the jobs without it as a group of their own. */
    Circumstance turned() {
        return new Circumstance(kind, otherValue, otherLabel, value, label, holds.negate(), modelled, Absent.DAY);
    }
}
