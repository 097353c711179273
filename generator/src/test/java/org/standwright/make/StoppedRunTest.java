package org.standwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standwright.make.Tree.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Runs that are killed, or fail, at every step there is. */
class StoppedRunTest {
    private static final List<OutputFile> OLD = List.of(file("a.txt", "old a"), file("parts/p.stl", "old p"));
    private static final List<OutputFile> NEW = List.of(file("a.txt", "new a"), file("sheets/s.svg", "new s"));
    private static final List<OutputFile> NEXT = List.of(file("a.txt", "next a"), file("b.txt", "next b"));

    private static final Map<String, String> OLD_TREE = Map.of("a.txt", "old a", "parts/p.stl", "old p");
    private static final Map<String, String> NEW_TREE = Map.of("a.txt", "new a", "sheets/s.svg", "new s");
    private static final Map<String, String> OTHERS = Map.of("notes.txt", "mine", "parts/photo.jpg", "mine too");

    @TempDir
    Path temp;

    static Stream<IntFunction<StoppingDisk>> kills() {
        return Stream.of(StoppingDisk::killedAfter, StoppingDisk::killedInTheMiddleAfter);
    }

    @ParameterizedTest
    @MethodSource("kills")
    void leavesTheOldOrTheNewFilesWhereverItIsKilled(IntFunction<StoppingDisk> killed) throws IOException {
        boolean finished = false;
        int step = 0;
        for (; !finished; step++) {
            var folder = withOldFiles("run" + step);
            finished = runs(folder, NEW, killed.apply(step));

            if (Files.exists(folder)) {
                var ours = Tree.of(folder);
                ours.keySet().removeAll(OTHERS.keySet());
                ours.keySet().removeIf(name -> name.endsWith("/")); // waits for a file of others
                assertThat(List.of(OLD_TREE, NEW_TREE)).contains(ours);
            }
            assertNextRunPutsAllRight(folder);
        }
        assertThat(step).isGreaterThan(15);
    }

    @Test
    void copesWithANextRunThatIsKilledToo() throws IOException {
        boolean finished = false;
        for (int step = 0; !finished; step += 3) {
            boolean secondFinished = false;
            for (int again = 0; !secondFinished; again++) {
                var folder = withOldFiles("run" + step + "-" + again);
                finished = runs(folder, NEW, StoppingDisk.killedAfter(step));
                secondFinished = runs(folder, NEW, StoppingDisk.killedAfter(again));
                assertNextRunPutsAllRight(folder);
            }
        }
    }

    @Test
    void leavesNothingOfAFirstRunThatWasKilled() {
        boolean finished = false;
        for (int step = 0; !finished; step++) {
            var folder = temp.resolve("run" + step).resolve("out");
            finished = runs(folder, NEW, StoppingDisk.killedAfter(step));
            OutputFolder.at(folder, StoppingDisk.thatLasts()).replaceWith(NEXT);
            assertThat(Tree.of(folder)).isEqualTo(Map.of("a.txt", "next a", "b.txt", "next b"));
            assertThat(Tree.names(folder.getParent())).containsExactly("out");
        }
    }

    /** Up to the second rename a failure leaves the old files; after it the new ones are there and a note says why. */
    @Test
    void keepsTheOldFilesWhenAStepFails() throws IOException {
        boolean sawFailure = false;
        boolean sawNote = false;
        var disk = StoppingDisk.failingOnceAfter(0);
        for (int step = 0; step == 0 || !disk.hasStepsLeft(); step++) {
            var folder = withOldFiles("run" + step);
            disk = StoppingDisk.failingOnceAfter(step);
            try {
                var notes = OutputFolder.at(folder, disk).replaceWith(NEW);
                sawNote |= !notes.isEmpty();
                assertThat(Tree.of(folder)).containsAllEntriesOf(NEW_TREE);
            } catch (OutputException e) {
                sawFailure = true;
                assertThat(e)
                        .hasMessageContaining("what it held before is kept")
                        .hasMessageContaining("No space left");
                assertThat(Tree.of(folder)).containsAllEntriesOf(OLD_TREE).containsAllEntriesOf(OTHERS);
                assertThat(Tree.names(folder.getParent())).containsExactly("out");
            }
            assertNextRunPutsAllRight(folder);
        }
        assertThat(sawFailure && sawNote).isTrue();
    }

    @Test
    void removesItsOwnFilesWhenAWriterFails() throws IOException {
        var folder = withOldFiles("run");
        var broken = List.of(file("a.txt", "new"), new OutputFile("b.txt", out -> {
            throw new IllegalStateException("a mistake of ours");
        }));
        assertThatThrownBy(
                        () -> OutputFolder.at(folder, StoppingDisk.thatLasts()).replaceWith(broken))
                .isInstanceOf(IllegalStateException.class);
        assertThat(Tree.names(folder.getParent())).containsExactly("out");
        assertThat(Tree.of(folder)).containsAllEntriesOf(OLD_TREE);
    }

    @Test
    void keepsAFileThatWasEditedWhileTheRunWasOn() throws IOException {
        var folder = withOldFiles("run");
        var editing = List.of(new OutputFile("a.txt", out -> {
            Tree.write(folder.resolve("a.txt"), "edited meanwhile");
            Tree.write(folder.resolve("late.txt"), "new meanwhile");
            out.write('n');
        }));
        var notes = OutputFolder.at(folder, StoppingDisk.thatLasts()).replaceWith(editing);
        assertThat(notes).hasSize(1).first().asString().contains("a.txt' was kept there");
        assertThat(Tree.of(folder)).containsEntry("a.txt", "n").containsEntry("late.txt", "new meanwhile");
        var old = Tree.names(folder.getParent()).stream()
                .filter(name -> name.startsWith("out.old-"))
                .findFirst();
        assertThat(folder.resolveSibling(old.orElseThrow()).resolve("a.txt")).hasContent("edited meanwhile");
    }

    @Test
    void leavesFoldersOfOthersAloneWhateverTheirNames() throws IOException {
        var folder = withOldFiles("run");
        Tree.write(folder.resolveSibling("out.new-0123456789ab/thesis.doc"), "years");
        Tree.write(folder.resolveSibling("out.old-0123456789ab/thesis.doc"), "years");
        Tree.write(folder.resolveSibling("out.new-version/.standwright-unfinished"), "");
        Files.createDirectories(folder.resolveSibling("out.old-2"));
        OutputFolder.at(folder, StoppingDisk.thatLasts()).replaceWith(NEW);
        assertThat(Tree.names(folder.getParent()))
                .containsExactly("out", "out.new-0123456789ab", "out.new-version", "out.old-0123456789ab", "out.old-2");
        assertThat(folder.resolveSibling("out.old-0123456789ab/thesis.doc")).hasContent("years");
        assertThat(folder.resolveSibling("out.new-0123456789ab/thesis.doc")).hasContent("years");
    }

    @Test
    void putsTheOldFilesBackWhenTheNewOnesAreDamaged() throws IOException {
        var folder = withOldFiles("run");
        var fresh = folder.resolveSibling("out.new-0123456789ab");
        OutputFolder.at(fresh).replaceWith(NEW);
        Tree.write(fresh.resolve("a.txt"), "");
        Files.move(folder, folder.resolveSibling("out.old-0123456789ab"));
        Swap.of(folder, "0123456789ab", new Disk()).recover();
        assertThat(Tree.of(folder)).containsAllEntriesOf(OLD_TREE).containsAllEntriesOf(OTHERS);
    }

    @Test
    void finishesASwapWhenTheMakerHasMadeAnEmptyFolderMeanwhile() throws IOException {
        var folder = withOldFiles("run");
        Files.move(folder, folder.resolveSibling("out.old-0123456789ab"));
        Files.createDirectory(folder);
        assertNextRunPutsAllRight(folder);
    }

    private Path withOldFiles(String name) throws IOException {
        var folder = temp.resolve(name).resolve("out");
        OutputFolder.at(folder, StoppingDisk.thatLasts()).replaceWith(OLD);
        OTHERS.forEach((other, text) -> Tree.write(folder.resolve(other), text));
        return folder;
    }

    private static boolean runs(Path folder, List<OutputFile> files, StoppingDisk disk) {
        try {
            OutputFolder.at(folder, disk).replaceWith(files);
            return true;
        } catch (StoppingDisk.Killed killed) {
            return false;
        }
    }

    private static void assertNextRunPutsAllRight(Path folder) {
        assertThat(OutputFolder.at(folder, StoppingDisk.thatLasts()).replaceWith(NEXT))
                .isEmpty();
        assertThat(Tree.of(folder))
                .isEqualTo(Map.of(
                        "a.txt", "next a", "b.txt", "next b", "notes.txt", "mine", "parts/photo.jpg", "mine too"));
        assertThat(Tree.names(folder.getParent())).containsExactly("out");
    }
}
