package org.standwright.bench;

import java.nio.file.Path;
import java.util.List;
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
import org.standwright.advice.Cures;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.rules.Checks;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.solid.AssemblySolids;

/** All rules over a stand whose solids are there: weighing included, and with every cure tried; the aim is 20 ms warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CheckBenchmark {
    @Param({"planer-stand", "drill-press-stand", "mitre-saw-stand"})
    public String preset;

    private Stand stand;
    private AssemblySolids solids;
    private LoadedStand loaded;

    @Setup
    public void build() {
        var presets = PresetLibrary.of(Path.of("."), Optional.empty());
        var text = presets.show(FileKind.STAND.word() + "/" + preset);
        stand = StandBuilder.build(
                (StandDesign) DesignFiles.parse(preset, text, presets).design());
        solids = AssemblySolids.of(stand.assembly());
        loaded = LoadedStand.of(stand, solids);
    }

    @Benchmark
    public List<Finding> rules() {
        return Checks.of(loaded);
    }

    @Benchmark
    public List<Finding> weighingAndRules() {
        return Checks.of(LoadedStand.of(stand, solids));
    }

    @Benchmark
    public List<Finding> weighingRulesAndCures() {
        var weighed = LoadedStand.of(stand, solids);
        return Cures.of(weighed.design(), solids, Checks.of(weighed));
    }
}
