package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.JsonText;
import org.standwright.file.text.NearestName;
import org.standwright.file.text.Position;
import org.standwright.file.text.Problems;

/** Looks at a file's version and kind first: without them nothing else in it can be judged. */
final class FileHeader {
    private static final int VERSION = 1;

    private FileHeader() {}

    /** @throws DesignFileException when the file is of another version, or of no kind that is {@code wanted} */
    static FileKind check(JsonText json, List<FileKind> wanted) {
        var problems = new Problems(json.file(), json.positions());
        var root = json.root();
        if (!root.isObject()) {
            problems.value("", root, "must be an object", "Put everything inside one pair of braces { }.");
            problems.throwIfAny();
        }
        checkVersion(root.path("version"), problems);
        var kind = FileKind.of(root.path("kind").asText());
        if (kind.filter(wanted::contains).isEmpty()) {
            refuseKind(root.path("kind"), wanted, problems);
        }
        problems.throwIfAny();
        return kind.orElseThrow();
    }

    private static void checkVersion(JsonNode version, Problems problems) {
        var wayOut = "Write \"version\": " + VERSION + ".";
        if (version.isMissingNode()) {
            problems.key("/version", new Position(1, 1), "missing", wayOut);
        } else if (!version.isIntegralNumber() || version.intValue() != VERSION) {
            problems.value(
                    "/version",
                    version,
                    "must be " + VERSION,
                    version.isIntegralNumber() && version.intValue() > VERSION
                            ? "A newer version of the program may read it."
                            : wayOut);
        }
    }

    private static void refuseKind(JsonNode kind, List<FileKind> wanted, Problems problems) {
        var words = wanted.stream().map(FileKind::word).toList();
        var either = NearestName.either(words);
        if (kind.isMissingNode()) {
            problems.key("/kind", new Position(1, 1), "missing", "Write \"kind\": " + either + ".");
        } else {
            var wayOut = FileKind.of(kind.asText())
                    .map(other -> wayOut(other, wanted))
                    .orElse(NearestName.guess(kind.asText(), words));
            problems.value("/kind", kind, "must be " + either, wayOut);
        }
    }

    private static String wayOut(FileKind given, List<FileKind> wanted) {
        return wanted.stream().allMatch(FileKind::isDesign)
                ? "A file of kind \"" + given.word() + "\" is a preset: name it in a design file."
                : "Move the file into a folder \"" + given.folder() + "\".";
    }
}
