package benchtrue.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
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
        Writer rows = new BufferedWriter(new OutputStreamWriter(new RowsOut(disk), StandardCharsets.UTF_8));
        rows.write("a row");
        assertThatThrownBy(rows::flush).hasMessageContaining("No space left");
        rows.write("what was still to come");
        rows.close();
        assertThat(disk.closed).isTrue();
    }
}
