package org.standwright.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.standwright.make.Tree.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFolderTest {
    private static final List<OutputFile> OLD = List.of(file("a.txt", "old a"), file("parts/p.stl", "old p"));
    private static final List<OutputFile> NEW = List.of(file("a.txt", "new a"), file("sheets/s.svg", "new s"));

    @TempDir
    Path beside;

    private Path folder() {
        return beside.resolve("out");
    }

    private List<String> write(List<OutputFile> files) {
        return OutputFolder.at(folder()).replaceWith(files);
    }

    @Test
    void writesAFolderThatWasNotThere() {
        assertThat(write(OLD)).isEmpty();
        assertThat(Tree.of(folder())).isEqualTo(Map.of("a.txt", "old a", "parts/p.stl", "old p"));
        assertThat(Tree.names(beside)).containsExactly("out");
    }

    @Test
    void makesTheFoldersThatItLiesIn() {
        OutputFolder.at(beside.resolve("x/y/out")).replaceWith(OLD);
        assertThat(Tree.names(beside.resolve("x/y"))).containsExactly("out");
    }

    @Test
    void fillsAnEmptyFolder() throws IOException {
        Files.createDirectory(folder());
        write(OLD);
        assertThat(Tree.of(folder())).hasSize(2);
        assertThat(Tree.names(beside)).containsExactly("out");
    }

    @Test
    void leavesNothingOfTheOldFilesBehind() {
        write(OLD);
        write(NEW);
        assertThat(Tree.of(folder())).isEqualTo(Map.of("a.txt", "new a", "sheets/s.svg", "new s"));
        assertThat(Tree.names(folder())).containsExactly("a.txt", "manifest.json", "sheets");
        assertThat(Tree.names(beside)).containsExactly("out");
    }

    @Test
    void writesTheSameManifestForTheSameFiles() throws IOException {
        write(List.of(file("b", "2"), file("a", "1")));
        var first = Files.readString(folder().resolve("manifest.json"));
        write(List.of(file("a", "1"), file("b", "2")));
        assertThat(Files.readString(folder().resolve("manifest.json"))).isEqualTo(first);
    }

    /** SHA-256 of 'abc': FIPS 180-4, example published by NIST with the standard. */
    @Test
    void namesSizeAndDigestOfEachFileInTheManifest() throws IOException {
        write(List.of(file("abc.txt", "abc")));
        assertThat(Files.readString(folder().resolve("manifest.json"))).isEqualTo("""
                {
                  "version" : 1,
                  "kind" : "standwright-output",
                  "files" : [
                    {
                      "name" : "abc.txt",
                      "size" : 3,
                      "sha256" : "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
                    }
                  ]
                }
                """);
    }

    @Test
    void carriesFilesOfOthersOver() throws IOException {
        write(OLD);
        Tree.write(folder().resolve("notes.txt"), "mine");
        Tree.write(folder().resolve("parts/photo.jpg"), "mine too");
        Files.createDirectories(folder().resolve("empty/inner"));
        Files.createSymbolicLink(folder().resolve("link"), Path.of("nowhere"));
        assertThat(write(NEW)).isEmpty();
        assertThat(Tree.of(folder()))
                .isEqualTo(Map.of(
                        "a.txt", "new a",
                        "sheets/s.svg", "new s",
                        "notes.txt", "mine",
                        "parts/photo.jpg", "mine too",
                        "empty/inner/", "",
                        "link", "-> nowhere"));
        assertThat(Tree.names(beside)).containsExactly("out");
    }

    @Test
    void keepsAnEditedFileThatNoNewFileReplaces() {
        write(OLD);
        Tree.write(folder().resolve("parts/p.stl"), "my p");
        write(NEW);
        write(NEW);
        assertThat(Tree.of(folder())).containsEntry("parts/p.stl", "my p");
    }

    @Test
    void keepsAnEditedFileOfTheSameSize() {
        write(OLD);
        Tree.write(folder().resolve("parts/p.stl"), "odl p");
        write(NEW);
        assertThat(Tree.of(folder())).containsEntry("parts/p.stl", "odl p");
    }

    @Test
    void refusesToWriteOverAnEditedFile() {
        write(OLD);
        Tree.write(folder().resolve("a.txt"), "my a");
        assertRefused("out/a.txt' is not as Standwright wrote it");
        assertThat(Tree.of(folder())).isEqualTo(Map.of("a.txt", "my a", "parts/p.stl", "old p"));
    }

    @Test
    void refusesToWriteOverAFileOfOthers() {
        write(OLD);
        Tree.write(folder().resolve("sheets/s.svg"), "mine");
        assertRefused("out/sheets/s.svg' is not as");
    }

    @Test
    void refusesToPutAFolderInThePlaceOfAFileOfOthers() {
        write(OLD);
        Tree.write(folder().resolve("sheets"), "mine");
        assertRefused("out/sheets' is not as");
    }

    @Test
    void refusesToPutAFolderInThePlaceOfALink() throws IOException {
        write(OLD);
        Files.createSymbolicLink(folder().resolve("sheets"), beside);
        assertRefused("out/sheets' is not as");
    }

    @Test
    void refusesToPutAFileInThePlaceOfAFolderOfOthers() throws IOException {
        write(List.of(file("b.txt", "b")));
        Files.createDirectories(folder().resolve("a.txt"));
        assertRefused("out/a.txt' is a folder");
    }

    @Test
    void refusesAFolderOfOthers() {
        Tree.write(folder().resolve("thesis.doc"), "years");
        assertRefused("holds files but no manifest.json");
        assertThat(Tree.of(folder())).containsEntry("thesis.doc", "years");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "null",
                "{\"name\": \"a web page\"}",
                "{\"version\": 2, \"kind\": \"standwright-output\", \"files\": []}",
                "{\"version\": 1, \"kind\": \"standwright-output\", \"files\": [{}]}",
                "{\"version\": 1, \"kind\": \"standwright-output\"}"
            })
    void refusesAFolderWhoseManifestIsNotOurs(String text) {
        Tree.write(folder().resolve("manifest.json"), text);
        assertRefused("holds files but no manifest.json");
    }

    @Test
    void deletesNothingOutsideWhateverAManifestSays() {
        Tree.write(beside.resolve("precious"), "");
        Tree.write(
                folder().resolve("manifest.json"),
                "{\"version\": 1, \"kind\": \"standwright-output\", \"files\": [{\"name\": \"../precious\", \"size\": 0,"
                        + " \"sha256\": \"e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855\"}]}");
        write(OLD);
        assertThat(Tree.names(beside)).containsExactly("out", "precious");
    }

    @Test
    void refusesAFileInPlaceOfTheFolder() {
        Tree.write(folder(), "text");
        assertRefused("is a file, not a folder");
        assertThat(folder()).hasContent("text");
    }

    @Test
    void refusesAFileInPlaceOfAFolderAboveIt() {
        Tree.write(beside.resolve("file"), "text");
        assertThatThrownBy(() -> OutputFolder.at(beside.resolve("file/out")).replaceWith(NEW))
                .isInstanceOf(OutputException.class)
                .hasMessageContaining("could not write");
    }

    @Test
    void refusesALinkInPlaceOfTheFolder() throws IOException {
        Files.createDirectory(beside.resolve("real"));
        Files.createSymbolicLink(folder(), beside.resolve("real"));
        assertRefused("is a symbolic link");
    }

    @Test
    void refusesADanglingLinkInPlaceOfTheFolder() throws IOException {
        Files.createSymbolicLink(folder(), beside.resolve("nowhere"));
        assertRefused("is a symbolic link");
    }

    @Test
    void writesThroughALinkAboveTheFolder() throws IOException {
        Files.createDirectory(beside.resolve("real"));
        Files.createSymbolicLink(beside.resolve("link"), beside.resolve("real"));
        OutputFolder.at(beside.resolve("link/out")).replaceWith(OLD);
        OutputFolder.at(beside.resolve("link/out")).replaceWith(NEW);
        assertThat(Tree.names(beside.resolve("real"))).containsExactly("out");
    }

    @ParameterizedTest
    @ValueSource(strings = {".", "", "..", "/", "src/.."})
    void refusesTheFolderYouAreIn(String name) {
        assertThatThrownBy(() -> OutputFolder.at(Path.of(name)).replaceWith(NEW))
                .isInstanceOf(OutputException.class)
                .hasMessageContaining("is the folder you are in");
    }

    @Test
    void saysThatItMayNotWriteThere() throws IOException {
        var shut = Files.createDirectory(beside.resolve("shut"));
        Files.setPosixFilePermissions(shut, PosixFilePermissions.fromString("r-xr-xr-x"));
        assumeFalse(Files.isWritable(shut), "permissions do not bind this user");
        assertThatThrownBy(() -> OutputFolder.at(shut.resolve("out")).replaceWith(NEW))
                .isInstanceOf(OutputException.class)
                .hasMessageContaining("no permission");
    }

    @Test
    void saysThatANameIsTooLong() {
        assertThatThrownBy(
                        () -> OutputFolder.at(beside.resolve("x".repeat(250))).replaceWith(NEW))
                .isInstanceOf(OutputException.class)
                .hasMessageContaining("File name too long");
    }

    @Test
    void checksWithoutWriting() {
        OutputFolder.at(folder()).check();
        assertThat(Tree.names(beside)).isEmpty();
        Tree.write(folder().resolve("thesis.doc"), "years");
        assertThatThrownBy(() -> OutputFolder.at(folder()).check()).isInstanceOf(OutputException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/a", "a//b", "a/", "../a", "a/../b", "./a", "a\\b", "manifest.json", " "})
    void refusesNamesThatAreNoPlacesInTheFolder(String name) {
        assertThatThrownBy(() -> file(name, "")).isInstanceOf(IllegalArgumentException.class);
    }

    private void assertRefused(String message) {
        assertThatThrownBy(() -> write(NEW)).isInstanceOf(OutputException.class).hasMessageContaining(message);
        assertThat(Tree.names(beside)).noneMatch(name -> name.startsWith("out."));
    }
}
