package benchtrue.format;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaGuardTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "=1+1,'=1+1",
                "+49,'+49",
                "-x,'-x",
                "@sum,'@sum",
                "\"\t=1\",\"'\t=1\"",
                "'=1,''=1",
                "''=1,'''=1",
                "\"\n=1\",\"'\n=1\"",
                "\uff1d1+1,'\uff1d1+1",
                "\uff20sum,'\uff20sum",
                "refret,refret",
                "'twas,'twas",
                "a=b,a=b",
                "\"\",\"\"",
                "','"
            })
    void textThatWouldRunIsWrittenHarmlessAndReadBack(String text, String cell) {
        assertThat(FormulaGuard.written(text)).isEqualTo(cell);
        assertThat(FormulaGuard.read(cell)).isEqualTo(text);
    }
}
