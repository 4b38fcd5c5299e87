package plumbleaf.browser.build;

import java.util.ArrayList;
import java.util.List;
import org.teavm.backend.wasm.WasmFunctionTypes;
import org.teavm.backend.wasm.model.WasmFunction;
import org.teavm.backend.wasm.model.WasmGlobal;
import org.teavm.backend.wasm.model.WasmLocal;
import org.teavm.backend.wasm.model.WasmModule;
import org.teavm.backend.wasm.model.WasmType;
import org.teavm.backend.wasm.model.instruction.WasmCall;
import org.teavm.backend.wasm.model.instruction.WasmConditional;
import org.teavm.backend.wasm.model.instruction.WasmFunctionReference;
import org.teavm.backend.wasm.model.instruction.WasmGetGlobal;
import org.teavm.backend.wasm.model.instruction.WasmGetLocal;
import org.teavm.backend.wasm.model.instruction.WasmInstruction;
import org.teavm.backend.wasm.model.instruction.WasmInstructionList;
import org.teavm.backend.wasm.model.instruction.WasmInt32Constant;
import org.teavm.backend.wasm.model.instruction.WasmIsNull;
import org.teavm.backend.wasm.model.instruction.WasmReturn;
import org.teavm.backend.wasm.model.instruction.WasmStructGet;
import org.teavm.backend.wasm.model.instruction.WasmStructSet;
import org.teavm.backend.wasm.model.instruction.WasmTeeLocal;

/**
 * Whether an object is an array of something. The compiler asks the class of what is in it how to tell, and for that question it notes of each of four thousand classes how; a dozen
 * places ask. Here the class that is asked for is known, and so is how to tell.
 */
final class ArrayKinds {
    private ArrayKinds() {}

    /** {@code the class of what is in it; call for its array; ...; call whether it is one}, with the object's class before it. */
    static void ask(WasmGetGlobal of, int depth, WasmModule module, WasmFunctionTypes types) {
        WasmInstruction end = of;
        for (int i = 0; i <= depth; i++) end = end.getNext();
        WasmCall asks = (WasmCall) end;
        List<WasmStructGet> reads = new ArrayList<>();
        Instructions.walk(asks.getFunction().getBody(), one -> {
            if (one instanceof WasmStructGet get) reads.add(get);
        });
        WasmStructGet within = reads.get(0);
        WasmFunction tells = tells(of.getGlobal(), reads.get(reads.size() - 1), module);
        asks.setFunction(check(of.getGlobal(), depth, within, tells, module, types));
        for (WasmInstruction one = of; one != asks; ) {
            WasmInstruction next = one.getNext();
            one.delete();
            one = next;
        }
    }

    /** {@code the class; how to tell whether another is one; set}, somewhere where the classes are made. */
    private static WasmFunction tells(WasmGlobal of, WasmStructGet how, WasmModule module) {
        List<WasmFunction> found = new ArrayList<>();
        for (WasmFunction function : module.functions)
            Instructions.walk(function.getBody(), one -> {
                if (one instanceof WasmStructSet set
                        && set.getFieldIndex() == how.getFieldIndex()
                        && set.getType().equals(how.getType())
                        && set.getPrevious() instanceof WasmFunctionReference told
                        && told.getPrevious() instanceof WasmGetGlobal kind
                        && kind.getGlobal().equals(of)) found.add(told.getFunction());
            });
        if (found.isEmpty()) throw new IllegalStateException("Nothing tells what is a " + of.getName());
        return found.get(0);
    }

    private static WasmFunction check(
            WasmGlobal of,
            int depth,
            WasmStructGet within,
            WasmFunction tells,
            WasmModule module,
            WasmFunctionTypes types) {
        WasmType classes = within.getType().getReference();
        WasmFunction check = new WasmFunction(types.of(WasmType.INT32, classes));
        WasmLocal kind = new WasmLocal(classes);
        check.add(kind);
        WasmInstructionList body = check.getBody();
        body.add(new WasmGetLocal(kind));
        for (int i = 0; i < depth; i++) {
            body.add(new WasmStructGet(within.getType(), within.getFieldIndex()));
            body.add(new WasmTeeLocal(kind));
            body.add(new WasmIsNull());
            WasmConditional none = new WasmConditional();
            none.getThenBlock().add(new WasmInt32Constant(0));
            none.getThenBlock().add(new WasmReturn());
            body.add(none);
            body.add(new WasmGetLocal(kind));
        }
        body.add(new WasmGetGlobal(of));
        body.add(new WasmCall(tells));
        module.functions.add(check);
        return check;
    }
}
