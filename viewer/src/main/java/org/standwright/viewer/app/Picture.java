package org.standwright.viewer.app;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javax.imageio.ImageIO;

/** Writes what is on the screen to a PNG file. */
final class Picture {
    private Picture() {}

    /** The file appears whole or not at all; its folder must be there. */
    static void write(Image image, Path file) throws IOException {
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(pixels(image), "png", bytes);
        var unfinished = file.resolveSibling(file.getFileName() + ".new-picture");
        try {
            Files.write(unfinished, bytes.toByteArray());
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    private static BufferedImage pixels(Image image) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        var argb = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), argb, 0, width);
        var opaque = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        opaque.setRGB(0, 0, width, height, argb, 0, width);
        return opaque;
    }
}
