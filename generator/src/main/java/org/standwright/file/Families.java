package org.standwright.file;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.jsontype.NamedType;
import java.util.List;
import java.util.Optional;
import org.standwright.design.Content;
import org.standwright.design.Cutout;
import org.standwright.design.Grip;
import org.standwright.design.Hang;
import org.standwright.design.Joint;
import org.standwright.design.KeptTogether;
import org.standwright.design.Support;
import org.standwright.design.WorkingHeight;
import org.standwright.design.kit.Hinge;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Rows;

/** The families of records, and what a file calls each member. */
public final class Families {
    private static final List<Class<?>> BY_KIND = List.of(
            WorkingHeight.class,
            Support.class,
            Joint.class,
            Cutout.class,
            Content.class,
            Hang.class,
            Grip.class,
            KeptTogether.class,
            Framing.class,
            Rows.class,
            Holder.class);

    private static final List<NamedType> MEMBERS = List.of(
            new NamedType(WorkingHeight.Given.class, "given"),
            new NamedType(WorkingHeight.Elbow.class, "elbow"),
            new NamedType(WorkingHeight.Beside.class, "beside"),
            new NamedType(Support.Casters.class, "casters"),
            new NamedType(Support.Levelers.class, "levelers"),
            new NamedType(Support.Plinth.class, "plinth"),
            new NamedType(Support.None.class, "none"),
            new NamedType(Joint.Housed.class, "dado"),
            new NamedType(Joint.Screwed.class, "screws"),
            new NamedType(Joint.Doweled.class, "dowels"),
            new NamedType(Joint.Connected.class, "connectors"),
            new NamedType(Cutout.Round.class, "round"),
            new NamedType(Cutout.Rectangular.class, "rectangular"),
            new NamedType(Content.GivenDrawers.class, "drawers"),
            new NamedType(Content.EqualDrawers.class, "equal-drawers"),
            new NamedType(Content.GraduatedDrawers.class, "graduated-drawers"),
            new NamedType(Content.FillDrawers.class, "filled-drawers"),
            new NamedType(Content.Open.class, "open"),
            new NamedType(Content.Door.class, "door"),
            new NamedType(Content.Clear.class, "clear"),
            new NamedType(Content.Divided.class, "divided"),
            new NamedType(Hang.Slides.class, "slides"),
            new NamedType(Hang.Runners.class, "runners"),
            new NamedType(Grip.Bought.class, "pull"),
            new NamedType(Grip.Notch.class, "notch"),
            new NamedType(KeptTogether.OneStrip.class, "one-strip"),
            new NamedType(KeptTogether.OneSheet.class, "one-sheet"),
            new NamedType(KeptTogether.OneBlank.class, "one-blank"),
            new NamedType(Framing.WoodStuds.class, "wood-studs"),
            new NamedType(Framing.SteelStuds.class, "steel-studs"),
            new NamedType(Framing.Masonry.class, "masonry"),
            new NamedType(Rows.Fixed.class, "fixed"),
            new NamedType(Rows.Even.class, "even"),
            new NamedType(Rows.Reach.class, "reach"),
            new NamedType(Rows.Densest.class, "densest"),
            new NamedType(Holder.Shelf.class, "shelf"),
            new NamedType(Holder.Bin.class, "bin"),
            new NamedType(Holder.Tray.class, "tray"),
            new NamedType(Holder.Slots.class, "slots"),
            new NamedType(Holder.Bores.class, "bores"),
            new NamedType(Holder.Pegs.class, "pegs"),
            new NamedType(Holder.ClampBar.class, "clamp-bar"),
            new NamedType(Holder.Hooks.class, "hooks"),
            new NamedType(Holder.Panel.class, "panel"),
            new NamedType(Holder.Cabinet.class, "cabinet"),
            new NamedType(Hinge.Concealed.class, "concealed"),
            new NamedType(Hinge.Butt.class, "butt"));

    private Families() {}

    /** Lets JSON tell members: of a hinge by its style, of every other family by its kind. */
    public static JsonMapper.Builder addTo(JsonMapper.Builder reader) {
        BY_KIND.forEach(family -> reader.addMixIn(family, ByKind.class));
        reader.addMixIn(Hinge.class, ByStyle.class);
        MEMBERS.forEach(reader::registerSubtypes);
        return reader;
    }

    /** What a file calls this member of a family; empty for what belongs to none. */
    public static Optional<String> word(Class<?> member) {
        return MEMBERS.stream()
                .filter(type -> type.getType().equals(member))
                .findFirst()
                .map(NamedType::getName);
    }

    /** The field that says which member of its family it is. */
    public static String chooser(Class<?> member) {
        return Hinge.class.isAssignableFrom(member) ? "style" : "kind";
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    private interface ByKind {}

    /** A hinge may be a file of its own, whose kind is "hinge". */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "style")
    private interface ByStyle {}
}
