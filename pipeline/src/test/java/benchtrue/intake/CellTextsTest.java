package benchtrue.intake;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.intake.cells.ClockText;
import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.cells.DateText;
import benchtrue.intake.cells.HoursText;
import benchtrue.intake.cells.NumberText;
import benchtrue.intake.cells.SerialDate;
import benchtrue.intake.cells.WrittenCells.MonthText;
import benchtrue.settings.DateOrder;
import benchtrue.settings.DecimalSign;
import benchtrue.settings.HoursUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellTextsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-03-09 | 2026-03-09 | 2026-03-09",
                "9.3.2026 | 2026-03-09 | 2026-03-09",
                "09.03.26 | 2026-03-09 | 2026-03-09",
                "09. 03. 2026 | 2026-03-09 | 2026-03-09",
                "9/3/2026 | 2026-03-09 | 2026-09-03",
                "9-3-26 | 2026-03-09 | 2026-09-03",
                "3/3/2026 | 2026-03-03 | 2026-03-03",
                "2026/3/9 | 2026-03-09 | 2026-03-09",
                "20260309 | 2026-03-09 | 2026-03-09",
                "09-Mar-26 | 2026-03-09 | 2026-03-09",
                "9 March 2026 | 2026-03-09 | 2026-03-09",
                "9. M\u00e4rz 2026 | 2026-03-09 | 2026-03-09",
                "Mar 9, 2026 | 2026-03-09 | 2026-03-09",
                "15-d\u00e9c-25 | 2025-12-15 | 2025-12-15",
                "1-Jan-69 | 1969-01-01 | 1969-01-01",
                "1-Jan-68 | 2068-01-01 | 2068-01-01",
                "2026-03-09T14:05:00 | 2026-03-09 | 2026-03-09",
                "9/3/2026 2:05 PM | 2026-03-09 | 2026-09-03",
                "46090 | 2026-03-09 | 2026-03-09",
                "46090.5 | 2026-03-09 | 2026-03-09",
                "31/2/2026 | 31/2/2026 | 31/2/2026",
                "soon | soon | soon",
                "2026-02-30 | 2026-02-30 | 2026-02-30"
            })
    void aDateIsReadAsItIsWritten(String text, String dayFirst, String monthFirst) {
        assertThat(DateText.canonical(text, () -> DateOrder.DAY_MONTH_YEAR, DateSystem.FROM_1900))
                .isEqualTo(dayFirst);
        assertThat(DateText.canonical(text, () -> DateOrder.MONTH_DAY_YEAR, DateSystem.FROM_1900))
                .isEqualTo(monthFirst);
    }

    /** Serials of reference values for the 1900 system. */
    @ParameterizedTest
    @CsvSource({"25569,1970-01-01", "36585,2000-02-29", "39448,2008-01-01", "45351,2024-02-29", "46023,2026-01-01"})
    void aSerialIsTheDayThatSpreadsheetsCount(String serial, String day) {
        assertThat(DateText.canonical(serial, () -> DateOrder.DAY_MONTH_YEAR, DateSystem.FROM_1900))
                .isEqualTo(day);
    }

    /** The same days in the 1904 system. */
    @ParameterizedTest
    @CsvSource({"0,1904-01-01", "24107,1970-01-01", "35123,2000-02-29", "37986,2008-01-01", "44561,2026-01-01"})
    void aSerialOf1904IsTheDayThatSpreadsheetsCount(int serial, String day) {
        assertThat(SerialDate.of1904(serial)).hasToString(day);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1234.5 | 1234.5 | 1234.5",
                "1,234.50 | 1234.50 | 1,234.50",
                "1.234,50 | 1.234,50 | 1234.50",
                "1,5 | 1,5 | 1.5",
                "1.234.567 | 1.234.567 | 1234567",
                "1,234 | 1234 | 1.234",
                "1 234,50 | 1 234,50 | 1234.50",
                "1'234.50 | 1234.50 | 1'234.50",
                "$12 | 12 | 12",
                "12 EUR | 12 | 12",
                "\u20ac 12 | 12 | 12",
                "12- | -12 | -12",
                "(12) | -12 | -12",
                "($12.00) | -12.00 | ($12.00)",
                "\u221212 | -12 | -12",
                "-12- | -12- | -12-",
                "(12 | (12 | (12",
                "1 2 3 | 1 2 3 | 1 2 3",
                "1e3 | 1e3 | 1e3",
                "abc | abc | abc"
            })
    void anAmountIsReadWithTheFilesDecimalSign(String text, String point, String comma) {
        assertThat(NumberText.canonical(text, sign -> DecimalSign.POINT)).isEqualTo(point);
        assertThat(NumberText.canonical(text, sign -> DecimalSign.COMMA)).isEqualTo(comma);
    }

    @ParameterizedTest
    @CsvSource({
        "1:30,1:30",
        "1h30,1:30",
        "1 h 5 min,1:05",
        "2h,2:00",
        "1.5 h,1.5",
        "1.5 hrs,1.5",
        "PT1H30M,1:30",
        "PT36H,36:00",
        "PT0.5H,0.5",
        "49m,0:49",
        "49 min,0:49",
        "90 min,1:30",
        "45 minutes,0:45",
        "45 Minuten,0:45",
        "90mn,1:30",
        "90 Min.,1:30",
        "90',1:30",
        "7.5 min,0:07:30",
        "-30 min,-0:30",
        "1 h 30 mn,1:30",
        "1h30',1:30",
        "1h 30m,1:30",
        "1 Std. 30 Min.,1:30",
        "2 Std,2:00",
        "1 hour and 30 minutes,1:30",
        "2 heures et 5 minutes,2:05",
        "1 uur 30,1:30",
        "1\u00bd,1:30",
        "1 \u00bd Std.,1:30",
        "\u00be h,0:45",
        "1 1/2,1:30",
        "1 1/2 h,1:30",
        "1-1/2,1:30",
        "3/4,0:45",
        "0:49,0:49",
        "0:49 h,0:49",
        "1:30 min,1:30 min",
        "1h75,1h75",
        "5/4,5/4",
        "2-3 h,2-3",
        "1.30,1.30",
        "90x,90x"
    })
    void aDurationIsReadAsItIsWritten(String text, String hours) {
        assertThat(HoursText.canonical(text, sign -> DecimalSign.POINT)).isEqualTo(hours);
    }

    @ParameterizedTest
    @CsvSource({
        "1.30,HOURS_MINUTES,1:30",
        "1.3,HOURS_MINUTES,1:30",
        "0.05,HOURS_MINUTES,0:05",
        "-1.15,HOURS_MINUTES,-1:15",
        "2,HOURS_MINUTES,2",
        "1.5,HOURS_MINUTES,1h5",
        "1.75,HOURS_MINUTES,1h75",
        "90,MINUTES,1:30",
        "150,HUNDREDTHS,1:30",
        "1.30,HOURS,1.30",
        "0:49,MINUTES,0:49"
    })
    void aFigureCountsWhatTheFileCounts(String number, HoursUnit unit, String hours) {
        assertThat(HoursText.counted(number, unit)).isEqualTo(hours);
    }

    @ParameterizedTest
    @CsvSource({
        "14:05,14:05",
        "2:05 PM,14:05",
        "12:00 am,0:00",
        "12:30 p.m.,12:30",
        "2pm,14:00",
        "13:00 PM,13:00 PM",
        "14.05,14:05",
        "1405,14:05",
        "0.5,12:00",
        "0.586805555555556,14:05",
        "2026-03-09 14:05,14:05",
        "9/3/2026 2:05:30 PM,14:05:30",
        "noon,noon"
    })
    void aTimeOfDayIsReadOnEitherClock(String text, String clock) {
        assertThat(ClockText.canonical(text)).isEqualTo(clock);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03,2026-03",
        "03/2026,2026-03",
        "3.2026,2026-03",
        "202603,2026-03",
        "Mar 2026,2026-03",
        "Mar-26,2026-03",
        "2026-03-31,2026-03",
        "46090,2026-03",
        "March,March"
    })
    void aMonthIsReadAsItIsWritten(String text, String month) {
        assertThat(MonthText.canonical(text, () -> DateOrder.DAY_MONTH_YEAR, DateSystem.FROM_1900))
                .isEqualTo(month);
    }
}
