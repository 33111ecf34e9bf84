package benchtrue.charts.drawing;

import benchtrue.format.Figures;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;

/** A value axis with round steps, written as the shop's region writes numbers. */
final class Scale {
    private Scale() {}

    /** Returns an axis from {@code least} to {@code most} with about so many steps. */
    static NumberAxis axis(double least, double most, int steps, Figures figures) {
        double step = step((most - least) / steps);
        NumberAxis axis = new NumberAxis(null);
        axis.setAutoRange(false);
        axis.setRange(least, most);
        axis.setTickUnit(new NumberTickUnit(step, new Format(figures, decimals(step))));
        axis.setTickLabelFont(ChartFont.SMALL.font());
        axis.setTickLabelPaint(Palette.MUTED.light());
        axis.setAxisLineVisible(false);
        axis.setTickMarksVisible(false);
        return axis;
    }

    /** Returns an axis that only places things. */
    static NumberAxis hidden(double least, double most) {
        NumberAxis axis = new NumberAxis(null);
        axis.setAutoRange(false);
        axis.setRange(least, most);
        axis.setVisible(false);
        axis.setTickUnit(new NumberTickUnit(most - least));
        axis.setTickLabelFont(ChartFont.SMALL.font());
        return axis;
    }

    /** Returns the smallest of 1, 2, 5 times a power of ten that is not below a width. */
    static double step(double width) {
        double power = 1;
        while (power * 10 <= width) {
            power *= 10;
        }
        while (power > width) {
            power /= 10;
        }
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= width * 0.999) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    private static int decimals(double step) {
        int decimals = 0;
        while (decimals < 4 && Math.abs(step - Math.rint(step)) > 1e-6) {
            step *= 10;
            decimals++;
        }
        return decimals;
    }

    /** Numbers as the shop's region writes them, where the library asks for the JDK's formatter. */
    private static final class Format extends NumberFormat {
        private static final long serialVersionUID = 1;
        private final transient Figures figures;
        private final int decimals;

        Format(Figures figures, int decimals) {
            this.figures = figures;
            this.decimals = decimals;
        }

        @Override
        public StringBuffer format(double number, StringBuffer to, FieldPosition place) {
            return to.append(figures.number(number, decimals));
        }

        @Override
        public StringBuffer format(long number, StringBuffer to, FieldPosition place) {
            return to.append(figures.count(number));
        }

        @Override
        public Number parse(String text, ParsePosition place) {
            throw new UnsupportedOperationException("axes are only written");
        }
    }
}
