package org.standwright.file.edit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.standwright.design.Design;
import org.standwright.file.DesignFiles;
import org.standwright.file.PresetLibrary;
import org.standwright.file.SchemaPlace;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.JsonTextReader;
import org.standwright.file.text.SourceText;
import org.standwright.unit.Units;

/**
 * Writes a change of a design into its file's text: only what differs is written anew, in the maker's unit and with
 * presets by their names. The text is read back before it is handed out, so that it never means anything else; only the
 * noise of sums is left out: 609.5999999999999 mm is written as 24 in.
 */
public final class DesignEdit {
    private static final String NAME = "design";

    private final String text;
    private final PresetLibrary presets;
    private final NamedPresets named;
    private final JsonNode written;
    private final JsonNode before;
    private final JsonNode after;
    private final Units unit;

    private DesignEdit(String text, Design before, Design after, PresetLibrary presets) {
        this.text = text;
        this.presets = presets;
        this.named = new NamedPresets(presets);
        this.written = JsonTextReader.read(new SourceText(NAME, text)).root();
        this.before = RecordTree.of(before);
        this.after = RecordTree.of(after);
        this.unit = before.unit();
    }

    /**
     * The text after a change.
     *
     * @param before what {@code text} means
     * @param after of the same kind
     * @throws JsonEditException when {@code text} means something else, or the change cannot be written into it
     * @throws DesignFileException when {@code text} cannot be read
     */
    public static String of(String text, Design before, Design after, PresetLibrary presets) {
        if (!DesignFiles.parse(NAME, text, presets).design().equals(before)) {
            throw new JsonEditException("The file has changed since; this change is of another design.");
        }
        if (before.getClass() != after.getClass() || before.unit() != after.unit()) {
            throw new JsonEditException("A change of what the file describes, or of its unit, is not written into it.");
        }
        var edit = new DesignEdit(text, before, after, presets);
        return edit.read(edit.finely())
                .or(() -> edit.read(edit.coarsely()))
                .orElseThrow(() -> new JsonEditException("The change cannot be written so that it is read back."));
    }

    /** Each field that differs, as far inside as it can be. */
    private String finely() {
        var change = change();
        change.fields(whole());
        return change.text();
    }

    /** Each part of the design that differs, as a whole. */
    private String coarsely() {
        var change = change();
        SchemaPlace.ofFile().fields(written).forEach((name, place) -> change.whole(whole().field(name, place)));
        return change.text();
    }

    private Changed whole() {
        return new Changed("", written, SchemaPlace.ofFile(), before, after, unit);
    }

    private DesignChange change() {
        return new DesignChange(text, new ValueWriter(presets, named), named);
    }

    private Optional<String> read(String changed) {
        try {
            return Optional.of(changed).filter(this::isAfter);
        } catch (DesignFileException refusal) {
            return Optional.empty();
        }
    }

    private boolean isAfter(String changed) {
        return SameTree.is(
                after, RecordTree.of(DesignFiles.parse(NAME, changed, presets).design()));
    }
}
