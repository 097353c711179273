package org.standwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Where the process begins and ends. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        // newer Java has a console even when nobody sits at it, unless it is told to look
        System.setProperty("jdk.console", "java.base");
        boolean terminal = System.console() != null;
        var charset = terminal ? System.console().charset() : StandardCharsets.UTF_8;
        var progress = terminal ? Progress.on(System.err) : Progress.silent();
        var run = new Run(writer(FileDescriptor.out, charset), writer(FileDescriptor.err, charset), progress);
        System.exit(run.run(args));
    }

    private static PrintWriter writer(FileDescriptor stream, Charset charset) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), charset), true);
    }
}
