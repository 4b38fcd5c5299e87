package plumbleaf.browser.build;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import org.teavm.backend.wasm.model.WasmCompositeType;
import org.teavm.backend.wasm.model.WasmFunction;
import org.teavm.backend.wasm.model.WasmGlobal;
import org.teavm.backend.wasm.model.WasmModule;
import org.teavm.backend.wasm.model.WasmStructure;
import org.teavm.backend.wasm.model.WasmType;
import org.teavm.backend.wasm.model.instruction.WasmCall;
import org.teavm.backend.wasm.model.instruction.WasmCallReference;
import org.teavm.backend.wasm.model.instruction.WasmCast;
import org.teavm.backend.wasm.model.instruction.WasmDefaultInstructionVisitor;
import org.teavm.backend.wasm.model.instruction.WasmFunctionReference;
import org.teavm.backend.wasm.model.instruction.WasmGetGlobal;
import org.teavm.backend.wasm.model.instruction.WasmGetLocal;
import org.teavm.backend.wasm.model.instruction.WasmInstruction;
import org.teavm.backend.wasm.model.instruction.WasmNullConstant;
import org.teavm.backend.wasm.model.instruction.WasmSetGlobal;
import org.teavm.backend.wasm.model.instruction.WasmSetLocal;
import org.teavm.backend.wasm.model.instruction.WasmStructGet;
import org.teavm.backend.wasm.model.instruction.WasmStructNew;
import org.teavm.backend.wasm.model.instruction.WasmStructNewDefault;
import org.teavm.backend.wasm.model.instruction.WasmStructSet;
import org.teavm.backend.wasm.model.instruction.WasmTeeLocal;
import org.teavm.backend.wasm.model.instruction.WasmTest;

/**
 * Numbers functions, globals and types in the order in which the code first names them, from the exports on: whoever reads the code along knows the number of a new one, so that it
 * need not be told. Which functions are referred to is noted on the way, and no others are.
 */
final class FirstUse {
    private final Map<Object, Integer> place = new HashMap<>();
    private final Deque<WasmFunction> next = new ArrayDeque<>();

    private FirstUse() {}

    static void number(WasmModule module) {
        for (WasmFunction function : module.functions) function.setReferenced(false);
        FirstUse order = new FirstUse();
        for (WasmFunction function : module.functions) if (function.getImportName() != null) order.named(function);
        order.next.clear();
        for (WasmFunction function : module.functions) if (function.getExportName() != null) order.follow(function);
        if (module.getStartFunction() != null) order.follow(module.getStartFunction());
        for (WasmFunction function : module.getFunctionTable()) order.follow(function);
        module.functions.sort((one, other) -> Integer.compare(order.of(one), order.of(other)));
        module.globals.sort((one, other) -> Integer.compare(order.of(one), order.of(other)));
        module.types.sort((one, other) -> Integer.compare(order.of(one), order.of(other)));
    }

    private int of(Object one) {
        return place.getOrDefault(one, Integer.MAX_VALUE);
    }

    private void follow(WasmFunction from) {
        named(from);
        while (!next.isEmpty()) for (WasmInstruction part : next.pop().getBody()) part.acceptVisitor(names);
    }

    private boolean isNew(Object one) {
        return place.putIfAbsent(one, place.size()) == null;
    }

    private void named(WasmFunction function) {
        if (!isNew(function)) return;
        named(function.getType());
        next.push(function);
    }

    private void named(WasmGlobal global) {
        if (!isNew(global)) return;
        named(global.getType());
        for (WasmInstruction part : global.getInitialValue()) part.acceptVisitor(names);
    }

    private void named(WasmType type) {
        if (type instanceof WasmType.CompositeReference reference) named(reference.composite);
    }

    private void named(WasmCompositeType type) {
        if (place.containsKey(type)) return;
        if (type instanceof WasmStructure kind && kind.getSupertype() != null) named(kind.getSupertype());
        isNew(type);
    }

    private final WasmDefaultInstructionVisitor names = new WasmDefaultInstructionVisitor() {
        @Override
        public void visit(WasmGetLocal instruction) {
            named(instruction.getLocal().getType());
        }

        @Override
        public void visit(WasmSetLocal instruction) {
            named(instruction.getLocal().getType());
        }

        @Override
        public void visit(WasmTeeLocal instruction) {
            named(instruction.getLocal().getType());
        }

        @Override
        public void visit(WasmNullConstant instruction) {
            named(instruction.getType());
        }

        @Override
        public void visit(WasmCall instruction) {
            named(instruction.getFunction());
        }

        @Override
        public void visit(WasmFunctionReference instruction) {
            named(instruction.getFunction());
            instruction.getFunction().setReferenced(true);
        }

        @Override
        public void visit(WasmGetGlobal instruction) {
            named(instruction.getGlobal());
        }

        @Override
        public void visit(WasmSetGlobal instruction) {
            named(instruction.getGlobal());
        }

        @Override
        public void visit(WasmCallReference instruction) {
            named(instruction.getType());
        }

        @Override
        public void visit(WasmCast instruction) {
            named(instruction.getTargetType());
        }

        @Override
        public void visit(WasmTest instruction) {
            named(instruction.getTestType());
        }

        @Override
        public void visit(WasmStructNew instruction) {
            named(instruction.getType());
        }

        @Override
        public void visit(WasmStructNewDefault instruction) {
            named(instruction.getType());
        }

        @Override
        public void visit(WasmStructGet instruction) {
            named(instruction.getType());
        }

        @Override
        public void visit(WasmStructSet instruction) {
            named(instruction.getType());
        }
    };
}
