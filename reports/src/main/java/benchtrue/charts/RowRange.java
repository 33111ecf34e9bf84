package benchtrue.charts;

/**
 * What the axis of a {@link RowChart} spans: all marks and bars, the reference with its band, and of intervals as much as
 * doubles the marks' reach; beyond, an interval ends in an arrow.
 *
 * @param least lower end
 * @param most upper end
 */
record RowRange(double least, double most) {
    private static final double AIR = 0.03;

    static RowRange of(RowChart chart) {
        boolean starts = chart.form() != RowChart.Form.MARKS;
        double base = Double.isNaN(chart.reference()) ? 0 : chart.reference();
        double near = base;
        double far = base;
        for (RowChart.Row row : chart.rows()) {
            if (!Double.isNaN(row.value())) {
                double start = starts && !Double.isNaN(row.start()) ? row.start() : row.value();
                near = Math.min(near, Math.min(start, row.value()));
                far = Math.max(far, Math.max(start, row.value()));
            }
        }
        double reach = Math.max(far - near, 2 * chart.tolerance());
        double least = Math.min(near, base - chart.tolerance());
        double most = Math.max(far, base + chart.tolerance());
        for (RowChart.Row row : chart.rows()) {
            least = Double.isNaN(row.lower()) ? least : Math.min(least, Math.max(row.lower(), near - reach));
            most = Double.isNaN(row.upper()) ? most : Math.max(most, Math.min(row.upper(), far + reach));
        }
        most = most > least ? most : least + 1;
        double air = AIR * (most - least);
        return new RowRange(least == 0 ? 0 : least - air, most + air);
    }
}
