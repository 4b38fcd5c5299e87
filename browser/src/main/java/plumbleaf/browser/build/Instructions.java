package plumbleaf.browser.build;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.teavm.backend.wasm.model.WasmLocal;
import org.teavm.backend.wasm.model.instruction.WasmBlock;
import org.teavm.backend.wasm.model.instruction.WasmConditional;
import org.teavm.backend.wasm.model.instruction.WasmGetLocal;
import org.teavm.backend.wasm.model.instruction.WasmInstruction;
import org.teavm.backend.wasm.model.instruction.WasmInstructionList;
import org.teavm.backend.wasm.model.instruction.WasmSetLocal;
import org.teavm.backend.wasm.model.instruction.WasmTeeLocal;
import org.teavm.backend.wasm.model.instruction.WasmTry;

/** Walks through a function's instructions, the nested ones too. */
final class Instructions {
    private Instructions() {}

    static void walk(WasmInstructionList list, Consumer<WasmInstruction> look) {
        for (WasmInstruction one : list) each(one, look);
    }

    private static void each(WasmInstruction one, Consumer<WasmInstruction> look) {
        look.accept(one);
        if (one instanceof WasmBlock block) walk(block.getBody(), look);
        else if (one instanceof WasmConditional choice) {
            walk(choice.getThenBlock(), look);
            walk(choice.getElseBlock(), look);
        } else if (one instanceof WasmTry attempt) walk(attempt.getBody(), look);
    }

    /** The local that it reads or writes. */
    static Optional<WasmLocal> local(WasmInstruction one) {
        if (one instanceof WasmGetLocal get) return Optional.of(get.getLocal());
        if (one instanceof WasmSetLocal set) return Optional.of(set.getLocal());
        if (one instanceof WasmTeeLocal tee) return Optional.of(tee.getLocal());
        return Optional.empty();
    }

    static boolean mention(WasmInstruction one, WasmLocal local) {
        Set<WasmLocal> named = new HashSet<>();
        each(one, part -> local(part).ifPresent(named::add));
        return named.contains(local);
    }
}
