package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class SideBySideTest {
    @Test
    void everyFileIsWorkedOnOnce() throws IOException {
        AtomicInteger[] runs = new AtomicInteger[40];
        List<SideBySide.Work> all = new ArrayList<>();
        for (int i = 0; i < runs.length; i++) {
            AtomicInteger run = runs[i] = new AtomicInteger();
            all.add(run::incrementAndGet);
        }
        SideBySide.run(all);
        assertThat(runs).extracting(AtomicInteger::get).containsOnly(1);
        SideBySide.run(List.of());
    }

    @Test
    void aFullDiskIsToldOnlyOnceNothingIsWrittenAnyMore() {
        AtomicInteger ended = new AtomicInteger();
        CountDownLatch failed = new CountDownLatch(1);
        List<SideBySide.Work> all = new ArrayList<>();
        all.add(() -> {
            failed.countDown();
            throw new IOException("No space left on device");
        });
        for (int i = 0; i < 20; i++) {
            all.add(() -> {
                try {
                    failed.await();
                } catch (InterruptedException e) {
                    throw new IllegalStateException(e);
                }
                ended.incrementAndGet();
            });
        }
        assertThatThrownBy(() -> SideBySide.run(all)).isInstanceOf(IOException.class);
        assertThat(ended).hasValue(20);
    }

    @Test
    void ofTwoFailuresTheFirstInOrderIsTold() {
        List<SideBySide.Work> all = List.of(
                () -> {},
                () -> {
                    throw new IllegalStateException("the workbook");
                },
                () -> {
                    throw new IOException("the page");
                });
        for (int night = 0; night < 50; night++) {
            assertThatThrownBy(() -> SideBySide.run(all)).hasMessage("the workbook");
        }
    }
}
