package plumbleaf.browser.build;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.teavm.backend.wasm.TeaVMWasmGCHost;
import org.teavm.backend.wasm.WasmFunctionTypes;
import org.teavm.backend.wasm.WasmGCTarget;
import org.teavm.backend.wasm.model.WasmCustomSection;
import org.teavm.backend.wasm.model.WasmFunction;
import org.teavm.backend.wasm.model.WasmGlobal;
import org.teavm.backend.wasm.model.WasmModule;
import org.teavm.backend.wasm.render.WasmBinaryRenderer;
import org.teavm.backend.wasm.render.WasmBinaryStatsCollector;
import org.teavm.backend.wasm.render.WasmBinaryVersion;
import org.teavm.backend.wasm.render.WasmBinaryWriter;
import org.teavm.model.ListableClassHolderSource;
import org.teavm.vm.BuildTarget;

/**
 * The compiler's way to WebAssembly, and then what can be left out of the module is left out.
 *
 * <p>Strict, it checks each index, each cast and each object that something is asked of, and throws Java's own exceptions.
 */
final class LeanTarget extends WasmGCTarget implements TeaVMWasmGCHost {
    private final Set<String> asked;
    private Optional<WasmModule> made = Optional.empty();
    private Optional<WasmFunctionTypes> types = Optional.empty();

    /** @param asked what a page asks of it by name; empty where that is all that the compiler lets it ask, and then it is strict */
    LeanTarget(Set<String> asked) {
        this.asked = asked;
        setStrict(asked.isEmpty());
        contributeToCodeGen((context, registry) -> {
            made = Optional.of(context.module());
            types = Optional.of(context.functionTypes());
        });
    }

    @Override
    public void emit(ListableClassHolderSource classes, BuildTarget folder, String name) throws IOException {
        super.emit(classes, nowhere(), name);
        WasmModule module = made.orElseThrow();
        if (!asked.isEmpty()) keepOnly(module);
        SharedChecks.share(module, types.orElseThrow());
        NewObjects.tidy(module, types.orElseThrow());
        UnreadFields.leaveOut(module);
        byte[] bytes = written(module);
        try (OutputStream out = folder.createResource(name)) {
            out.write(bytes);
        }
    }

    /** What only texts and faults that pass between page and module need goes with what gives it to the page. */
    private void keepOnly(WasmModule module) {
        for (WasmFunction function : module.functions)
            if (function.getExportName() != null && !asked.contains(function.getExportName()))
                function.setExportName(null);
        for (WasmGlobal global : module.globals)
            if (global.getExportName() != null && !asked.contains(global.getExportName())) global.setExportName(null);
    }

    private static BuildTarget nowhere() {
        return name -> OutputStream.nullOutputStream();
    }

    private static byte[] written(WasmModule module) {
        FirstUse.number(module);
        module.prepareForRendering();
        WasmBinaryWriter bytes = new WasmBinaryWriter();
        new WasmBinaryRenderer(
                        bytes, WasmBinaryVersion.V_0x1, true, null, null, null, null, WasmBinaryStatsCollector.EMPTY)
                .render(module, () -> sections(module));
        return bytes.getData();
    }

    /** How much memory it starts with, as {@code engine.js} reads it. */
    private static Collection<WasmCustomSection> sections(WasmModule module) {
        int data = module.getSegments().stream()
                .mapToInt(segment -> segment.getOffset() + segment.getLength())
                .max()
                .orElse(0);
        String words = "{\"min\":" + module.getMinMemorySize() + ",\"dataSize\":" + data + "}";
        return List.of(new WasmCustomSection("teavm.memoryRequirements", words.getBytes(StandardCharsets.UTF_8)));
    }
}
