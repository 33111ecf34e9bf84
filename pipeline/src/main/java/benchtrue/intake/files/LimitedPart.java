package benchtrue.intake.files;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A part of a workbook that is held in memory whole, and so may not be endless. */
final class LimitedPart extends FilterInputStream {
    private final long most;
    private final String file;
    private final String what;
    private long read;

    LimitedPart(InputStream part, long most, String file, String what) {
        super(part);
        this.most = most;
        this.file = file;
        this.what = what;
    }

    @Override
    public int read() throws IOException {
        int letter = super.read();
        count(letter < 0 ? 0 : 1);
        return letter;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        int got = super.read(into, offset, length);
        count(Math.max(got, 0));
        return got;
    }

    private void count(int got) {
        read += got;
        if (read > most) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file + ": found a workbook with more than " + most + " bytes of " + what
                            + ", expected less. Export the table as CSV.");
        }
    }
}
