package org.standwright.make;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Refuses to write over something that is not ours. */
final class Clash {
    private final Set<String> files = new HashSet<>();
    private final Set<String> folders = new HashSet<>();

    Clash(List<OutputFile> wanted) {
        for (var file : wanted) {
            files.add(file.name());
            for (int end = file.name().indexOf('/'); end > 0; end = file.name().indexOf('/', end + 1)) {
                folders.add(file.name().substring(0, end));
            }
        }
    }

    /**
     * @param foreign names of files that must stay
     * @param foreignFolders names of subfolders that must stay
     */
    void refuse(Path folder, List<String> foreign, List<String> foreignFolders) {
        for (var name : foreign) {
            if (files.contains(name) || folders.contains(name)) {
                throw new OutputException("'" + folder.resolve(name)
                        + "' is not as Standwright wrote it, and a new file needs its place. Move it out of the"
                        + " folder, or choose another folder. Nothing was changed.");
            }
        }
        for (var name : foreignFolders) {
            if (files.contains(name)) {
                throw new OutputException("'" + folder.resolve(name)
                        + "' is a folder, and a new file needs its place. Move it out of the folder, or choose"
                        + " another folder. Nothing was changed.");
            }
        }
    }
}
