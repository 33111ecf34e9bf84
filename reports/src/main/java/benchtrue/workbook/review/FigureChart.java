package benchtrue.workbook.review;

import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A chart of the spreadsheet program's own over one column of figures, so that it follows the cells. */
final class FigureChart {
    private final XSSFSheet sheet;
    private final String title;
    private final String series;
    private final String format;

    /** Takes what stands above it, what its bars are called and how its axis writes numbers. */
    FigureChart(SXSSFSheet sheet, String title, String series, String format) {
        this.sheet = sheet.getWorkbook().getXSSFWorkbook().getSheet(sheet.getSheetName());
        this.title = title;
        this.series = series;
        this.format = format;
    }

    /**
     * What is drawn.
     *
     * @param firstRow row of the first bar, numbered from 1
     * @param nameColumn column of their names, numbered from 0
     * @param names their names
     * @param column of their figures, numbered from 0
     * @param values their figures; null for one that is not known, which has no bar
     */
    record Bars(int firstRow, int nameColumn, List<String> names, int column, List<Double> values) {
        private String cells(XSSFSheet sheet, int of) {
            int first = firstRow - 1;
            return new CellRangeAddress(first, first + names.size() - 1, of, of)
                    .formatAsString(sheet.getSheetName(), true);
        }
    }

    /** Draws over some rows of the sheet, numbered from 1, and its first columns. */
    void draw(int topRow, int bottomRow, int columns, Bars bars) {
        XSSFClientAnchor place = new XSSFClientAnchor(0, 0, 0, 0, 0, topRow - 1, columns, bottomRow);
        XSSFChart chart = sheet.createDrawingPatriarch().createChart(place);
        chart.getGraphicFrame().setName(title);
        chart.getGraphicFrame()
                .getCTGraphicalObjectFrame()
                .getNvGraphicFramePr()
                .getCNvPr()
                .setDescr(
                        "Bars: " + series + ", one for each of " + bars.names().size() + " rows of this sheet");
        chart.setTitleText(title);
        // The library writes the machine's language into the title; the workbook's words are English everywhere.
        chart.getTitle().getBody().getParagraph(0).getTextRuns().get(0).setLanguage(Locale.US);
        chart.setTitleOverlay(false);
        XDDFCategoryAxis across = chart.createCategoryAxis(AxisPosition.BOTTOM);
        across.setTickLabelPosition(AxisTickLabelPosition.LOW);
        XDDFValueAxis axis = chart.createValueAxis(AxisPosition.LEFT);
        axis.setCrosses(AxisCrosses.AUTO_ZERO);
        axis.setNumberFormat(format);
        XDDFChartData data = chart.createData(ChartTypes.BAR, across, axis);
        ((XDDFBarChartData) data).setBarDirection(BarDirection.COL);
        data.setVaryColors(false);
        XDDFChartData.Series drawn = data.addSeries(
                XDDFDataSourcesFactory.fromArray(
                        bars.names().toArray(String[]::new), bars.cells(sheet, bars.nameColumn())),
                XDDFDataSourcesFactory.fromArray(
                        bars.values().toArray(Double[]::new), bars.cells(sheet, bars.column())));
        drawn.setTitle(series);
        drawn.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(PresetColor.STEEL_BLUE)));
        chart.plot(data);
    }
}
