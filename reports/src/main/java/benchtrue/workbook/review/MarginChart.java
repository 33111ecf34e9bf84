package benchtrue.workbook.review;

import benchtrue.costing.EarnedMonth;
import benchtrue.shop.Absent;
import benchtrue.workbook.sheet.Amounts;
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

/** A chart of the spreadsheet program's own over the margin by month, so that it follows the cells. */
final class MarginChart {
    private static final int LAST_COLUMN = 13;

    private final XSSFSheet sheet;
    private final List<EarnedMonth> months;

    MarginChart(SXSSFSheet sheet, List<EarnedMonth> months) {
        this.sheet = sheet.getWorkbook().getXSSFWorkbook().getSheet(sheet.getSheetName());
        this.months = months;
    }

    /** Draws over some rows of the sheet, numbered from 1, what stands in others, which begin at a row. */
    void draw(int topRow, int bottomRow, int firstRow) {
        XSSFClientAnchor place = new XSSFClientAnchor(0, 0, 0, 0, 0, topRow - 1, LAST_COLUMN, bottomRow);
        XSSFChart chart = sheet.createDrawingPatriarch().createChart(place);
        chart.setTitleText("Margin of the jobs finished, by month");
        // The library writes the machine's language into the title; the workbook's words are English everywhere.
        chart.getTitle().getBody().getParagraph(0).getTextRuns().get(0).setLanguage(Locale.US);
        chart.setTitleOverlay(false);
        XDDFCategoryAxis across = chart.createCategoryAxis(AxisPosition.BOTTOM);
        across.setTickLabelPosition(AxisTickLabelPosition.LOW);
        XDDFValueAxis money = chart.createValueAxis(AxisPosition.LEFT);
        money.setCrosses(AxisCrosses.AUTO_ZERO);
        money.setNumberFormat("#,##0");
        XDDFChartData data = chart.createData(ChartTypes.BAR, across, money);
        ((XDDFBarChartData) data).setBarDirection(BarDirection.COL);
        data.setVaryColors(false);
        String[] names =
                months.stream().map(month -> MoneyRow.month(month.month())).toArray(String[]::new);
        Double[] margins = months.stream().map(month -> drawn(month.margin())).toArray(Double[]::new);
        XDDFChartData.Series series = data.addSeries(
                XDDFDataSourcesFactory.fromArray(names, cells('A', firstRow)),
                XDDFDataSourcesFactory.fromArray(margins, cells(MoneyRow.MARGIN, firstRow)));
        series.setTitle("Margin");
        series.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(PresetColor.STEEL_BLUE)));
        chart.plot(data);
    }

    /** A month whose margin is not known has no bar. */
    private static Double drawn(long margin) {
        return Absent.has(margin) ? Amounts.money(margin) : null;
    }

    private String cells(char column, int firstRow) {
        int first = firstRow - 1;
        return new CellRangeAddress(first, first + months.size() - 1, column - 'A', column - 'A')
                .formatAsString(sheet.getSheetName(), true);
    }
}
