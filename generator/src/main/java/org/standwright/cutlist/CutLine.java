package org.standwright.cutlist;

import java.util.List;
import org.standwright.part.Material;
import org.standwright.part.Part;

/**
 * Parts that are equal by rotation, as one line. Where the mirror image of a part is needed too, the two lines share a
 * letter and end in -L and -R.
 *
 * @param label short, written on each piece: 'A', 'B-L'
 * @param part the first of the equal parts; its frame is the one that {@code notes} speak in
 * @param members labels of all the equal parts in the assembly
 * @param notes machining, one sentence a feature or row of features
 */
public record CutLine(String label, Part part, List<String> members, List<String> notes) {
    public CutLine {
        members = List.copyOf(members);
        notes = List.copyOf(notes);
    }

    public int count() {
        return members.size();
    }

    public Material material() {
        return part.material();
    }
}
