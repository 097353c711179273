package org.standwright.bench;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.standwright.cutlist.CutList;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;

/** From a design in memory to its assembly and cut list; the aim is 5 ms warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class StandBenchmark {
    @Param({"planer-stand", "drill-press-stand", "mitre-saw-stand"})
    public String preset;

    private StandDesign design;

    @Setup
    public void read() {
        var presets = PresetLibrary.of(Path.of("."), Optional.empty());
        var text = presets.show(FileKind.STAND.word() + "/" + preset);
        design = (StandDesign) DesignFiles.parse(preset, text, presets).design();
    }

    @Benchmark
    public CutList designToCutList() {
        return CutList.of(StandBuilder.build(design).assembly(), design.unit());
    }
}
