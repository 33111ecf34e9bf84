package benchtrue.workbook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class RowsOutTest {
    /** A disk with no room left. */
    private static final class Full extends OutputStream {
        private boolean closed;

        @Override
        public void write(int octet) throws IOException {
            throw new IOException("No space left on device");
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    @Test
    void aFullDiskIsToldOnceAndTheFileIsClosedAllTheSame() throws IOException {
        Full disk = new Full();
        Writer rows = new RowsOut(disk);
        rows.write("a row");
        assertThatThrownBy(rows::flush).hasMessageContaining("No space left");
        rows.write("what was still to come");
        rows.close();
        assertThat(disk.closed).isTrue();
    }

    @Test
    void wordsOfEveryTongueComeOutAsTheyWentInHoweverLongTheyAre() throws IOException {
        String words = "Sattel & Bünde, 指板 and \uD83C\uDFB8; ";
        ByteArrayOutputStream disk = new ByteArrayOutputStream();
        StringBuilder told = new StringBuilder();
        try (Writer rows = new RowsOut(disk)) {
            for (int times : new int[] {1, 700, 0, 5_000, 3, 20_000}) {
                rows.write(words.repeat(times));
                rows.write("x".repeat(times * 10).toCharArray());
                rows.write('ß');
                told.append(words.repeat(times)).append("x".repeat(times * 10)).append('ß');
            }
        }
        assertThat(disk.toString(StandardCharsets.UTF_8)).isEqualTo(told.toString());
    }
}
