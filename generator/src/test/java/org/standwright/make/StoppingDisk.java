package org.standwright.make;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A disk that works for a number of steps and then stops: as when the process is killed, or as when it is full. */
final class StoppingDisk extends Disk {
    /** What a killed process does: nothing more, not even tidying up. */
    static final class Killed extends Error {
        private static final long serialVersionUID = 1L;
    }

    private enum Stop {
        KILLED,
        KILLED_IN_THE_MIDDLE,
        FULL
    }

    private final Stop stop;
    private int stepsLeft;

    private StoppingDisk(Stop stop, int steps) {
        this.stop = stop;
        this.stepsLeft = steps;
    }

    static StoppingDisk killedAfter(int steps) {
        return new StoppingDisk(Stop.KILLED, steps);
    }

    static StoppingDisk thatLasts() {
        return new StoppingDisk(Stop.KILLED, Integer.MAX_VALUE);
    }

    /** Killed in the step after these; when that step is a write, half of the file is there. */
    static StoppingDisk killedInTheMiddleAfter(int steps) {
        return new StoppingDisk(Stop.KILLED_IN_THE_MIDDLE, steps);
    }

    /** One step fails, those after it work again. */
    static StoppingDisk failingOnceAfter(int steps) {
        return new StoppingDisk(Stop.FULL, steps);
    }

    /** Whether it never came to the stop. */
    boolean hasStepsLeft() {
        return stepsLeft >= 0;
    }

    private void step(Path path) throws IOException {
        stepsLeft--;
        if (stop == Stop.FULL && stepsLeft == -1) {
            throw new FileSystemException(path.toString(), null, "No space left on device");
        }
        if (stop != Stop.FULL && stepsLeft < 0) {
            throw new Killed();
        }
    }

    @Override
    void makeFolder(Path folder) throws IOException {
        step(folder);
        super.makeFolder(folder);
    }

    @Override
    void write(Path file, OutputFile.Content content) throws IOException {
        if (stop == Stop.KILLED_IN_THE_MIDDLE && stepsLeft == 0) {
            writeQuickly(file, out -> out.write("ha".getBytes(StandardCharsets.UTF_8)));
        }
        step(file);
        writeQuickly(file, content);
    }

    /** Without waiting for the disk, which would make up most of these tests' time. */
    private static void writeQuickly(Path file, OutputFile.Content content) throws IOException {
        try (var out = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW)) {
            content.writeTo(out);
        }
    }

    @Override
    void rename(Path from, Path to) throws IOException {
        step(from);
        super.rename(from, to);
    }

    @Override
    void delete(Path path) throws IOException {
        step(path);
        super.delete(path);
    }
}
