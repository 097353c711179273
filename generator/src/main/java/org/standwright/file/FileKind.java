package org.standwright.file;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.WallDesign;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Connector;
import org.standwright.design.kit.Dowel;
import org.standwright.design.kit.Edging;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Leveler;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Pull;
import org.standwright.design.kit.Screw;
import org.standwright.design.kit.Slide;
import org.standwright.part.SheetGood;

/** What a file describes: its field "kind", its folder among the presets and the record it becomes. */
public enum FileKind {
    STAND("stand", "stands", StandDesign.class, Role.DESIGN),
    CLEAT_WALL("cleat-wall", "walls", WallDesign.class, Role.DESIGN),
    MACHINE("machine", "machines", Machine.class),
    SHEET("sheet", "sheets", SheetGood.class),
    SLIDE("slide", "slides", Slide.class),
    CASTER("caster", "casters", Caster.class),
    LEVELER("leveler", "levelers", Leveler.class),
    PLINTH("plinth", "plinths", Support.Plinth.class),
    SCREW("screw", "screws", Screw.class),
    BAR("bar", "bars", Bar.class),
    EDGING("edging", "edgings", Edging.class),
    HINGE("hinge", "hinges", Hinge.class),
    PULL("pull", "pulls", Pull.class),
    DOWEL("dowel", "dowels", Dowel.class),
    CONNECTOR("connector", "connectors", Connector.class);

    private final String word;
    private final String folder;
    private final Class<?> type;
    private final Role role;

    /** What files of a kind are there for. */
    private enum Role {
        /** A piece of furniture. */
        DESIGN,
        /** Something that furniture is made with. */
        PRESET
    }

    FileKind(String word, String folder, Class<?> type) {
        this(word, folder, type, Role.PRESET);
    }

    FileKind(String word, String folder, Class<?> type, Role role) {
        this.word = word;
        this.folder = folder;
        this.type = type;
        this.role = role;
    }

    /** The kind that the field "kind" calls so. */
    public static Optional<FileKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    /** The words of all kinds. */
    public static List<String> words() {
        return Arrays.stream(values()).map(FileKind::word).toList();
    }

    public String word() {
        return word;
    }

    /** 'a sheet', 'an edging'. */
    String oneOf() {
        return ("aeiou".indexOf(word.charAt(0)) < 0 ? "a " : "an ") + word;
    }

    /** Name of its folder among the presets. */
    public String folder() {
        return folder;
    }

    Class<?> type() {
        return type;
    }

    /** Whether it is a piece of furniture, and not something that furniture is made with. */
    public boolean isDesign() {
        return role == Role.DESIGN;
    }
}
