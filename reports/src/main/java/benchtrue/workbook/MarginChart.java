package benchtrue.workbook;

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
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A chart of the spreadsheet program's own over the margin by month, so that it follows the cells. */
final class MarginChart {
    private static final int LAST_COLUMN = 13;

    private final XSSFSheet sheet;

    MarginChart(XSSFSheet sheet) {
        this.sheet = sheet;
    }

    /** Draws over some rows of the sheet, numbered from 1, what stands in others. */
    void draw(int topRow, int bottomRow, int firstRow, int lastRow) {
        XSSFClientAnchor place = new XSSFClientAnchor(0, 0, 0, 0, 0, topRow - 1, LAST_COLUMN, bottomRow);
        XSSFChart chart = sheet.createDrawingPatriarch().createChart(place);
        chart.setTitleText("Margin of the jobs finished, by month");
        // The library writes the machine's language into the title; the workbook's words are English everywhere.
        chart.getTitle().getBody().getParagraph(0).getTextRuns().get(0).setLanguage(Locale.US);
        chart.setTitleOverlay(false);
        XDDFCategoryAxis months = chart.createCategoryAxis(AxisPosition.BOTTOM);
        months.setTickLabelPosition(AxisTickLabelPosition.LOW);
        XDDFValueAxis money = chart.createValueAxis(AxisPosition.LEFT);
        money.setCrosses(AxisCrosses.AUTO_ZERO);
        money.setNumberFormat("#,##0");
        XDDFChartData data = chart.createData(ChartTypes.BAR, months, money);
        ((XDDFBarChartData) data).setBarDirection(BarDirection.COL);
        data.setVaryColors(false);
        int margin = MoneyRow.MARGIN - 'A';
        XDDFChartData.Series series = data.addSeries(
                XDDFDataSourcesFactory.fromStringCellRange(sheet, column(0, firstRow, lastRow)),
                XDDFDataSourcesFactory.fromNumericCellRange(sheet, column(margin, firstRow, lastRow)));
        series.setTitle("Margin");
        series.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(PresetColor.STEEL_BLUE)));
        chart.plot(data);
    }

    private static CellRangeAddress column(int column, int firstRow, int lastRow) {
        return new CellRangeAddress(firstRow - 1, lastRow - 1, column, column);
    }
}
