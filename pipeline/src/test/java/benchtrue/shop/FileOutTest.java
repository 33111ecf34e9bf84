package benchtrue.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FileOutTest {
    /** A disk that has room for some bytes, and none to bring them to rest. */
    private static final class Full extends OutputStream {
        private int room;
        private boolean closed;

        Full(int room) {
            this.room = room;
        }

        @Override
        public void write(int octet) throws IOException {
            if (room-- <= 0) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public void flush() throws IOException {
            throw new IOException("No space left on device");
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    /** The disk fills up only when the file is closed, in the midst of the rows, or at once. */
    @ParameterizedTest
    @ValueSource(ints = {1, 3_000, 100_000, 1_000_000})
    void aFullDiskIsToldAndTheFileIsClosedAllTheSame(int letters) {
        Full disk = new Full(5_000);
        assertThatThrownBy(() -> {
                    try (Writer rows = FileOut.text(disk)) {
                        rows.write("a".repeat(letters));
                    }
                })
                .isInstanceOf(IOException.class)
                .hasMessageContaining("No space left");
        assertThat(disk.closed).isTrue();
    }

    @Test
    void whatIsStillToComeAfterAFullDiskIsDropped() throws IOException {
        Full disk = new Full(0);
        Writer rows = FileOut.text(disk);
        rows.write("a row");
        assertThatThrownBy(rows::flush).hasMessageContaining("No space left");
        assertThat(disk.closed).isTrue();
        assertThatCode(() -> {
                    rows.write("what was still to come");
                    rows.close();
                })
                .doesNotThrowAnyException();
    }

    @Test
    void halfALetterIsAQuestionMarkAndNoFault() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Writer rows = FileOut.text(bytes)) {
            rows.write("T1\uD83D,\u00fc");
        }
        assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo("T1?,\u00fc");
    }
}
