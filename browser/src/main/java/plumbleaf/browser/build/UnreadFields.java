package plumbleaf.browser.build;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.teavm.backend.wasm.model.WasmFunction;
import org.teavm.backend.wasm.model.WasmGlobal;
import org.teavm.backend.wasm.model.WasmModule;
import org.teavm.backend.wasm.model.WasmStructure;
import org.teavm.backend.wasm.model.instruction.WasmCall;
import org.teavm.backend.wasm.model.instruction.WasmDefaultInstructionVisitor;
import org.teavm.backend.wasm.model.instruction.WasmFunctionReference;
import org.teavm.backend.wasm.model.instruction.WasmGetGlobal;
import org.teavm.backend.wasm.model.instruction.WasmGetLocal;
import org.teavm.backend.wasm.model.instruction.WasmInstruction;
import org.teavm.backend.wasm.model.instruction.WasmInt32Constant;
import org.teavm.backend.wasm.model.instruction.WasmSetGlobal;
import org.teavm.backend.wasm.model.instruction.WasmStructGet;
import org.teavm.backend.wasm.model.instruction.WasmStructSet;

/**
 * What the compiler notes of each class and nobody asks for: {@code a.field = function} where no function that can be reached reads the field is left out, and with it the
 * function. Of four thousand classes it notes how to tell whether another is a kind of it, for a question that only reflection asks.
 */
final class UnreadFields {
    /** A field of the first of the kinds that has it: those after it inherit it. */
    private record Field(WasmStructure of, int index) {
        static Field of(WasmStructSet set) {
            return of(set.getType(), set.getFieldIndex());
        }

        static Field of(WasmStructure kind, int index) {
            WasmStructure first = kind;
            while (first.getSupertype() != null
                    && first.getSupertype().getFields().size() > index) first = first.getSupertype();
            return new Field(first, index);
        }
    }

    private final WasmModule module;
    private final Set<Object> reached = new HashSet<>();
    private final Deque<Object> next = new ArrayDeque<>();
    private final Set<Field> read = new HashSet<>();
    private final Map<Field, Set<Object>> waiting = new HashMap<>();
    private final Set<WasmStructSet> notes = new LinkedHashSet<>();

    private UnreadFields(WasmModule module) {
        this.module = module;
    }

    static void leaveOut(WasmModule module) {
        UnreadFields fields = new UnreadFields(module);
        fields.reach();
        fields.leaveOut();
    }

    private void reach() {
        for (WasmFunction function : module.functions)
            if (function.getExportName() != null
                    || function.getImportName() != null
                    || function.equals(module.getStartFunction())) found(function);
        for (WasmFunction function : module.getFunctionTable()) found(function);
        for (WasmGlobal global : module.globals)
            if (global.getExportName() != null || global.getImportName() != null) found(global);
        while (!next.isEmpty()) {
            Object one = next.remove();
            if (one instanceof WasmFunction function)
                for (WasmInstruction part : function.getBody()) part.acceptVisitor(reading);
            else if (one instanceof WasmGlobal global)
                for (WasmInstruction part : global.getInitialValue()) part.acceptVisitor(reading);
        }
    }

    private void found(Object one) {
        if (reached.add(one)) next.add(one);
    }

    private final WasmDefaultInstructionVisitor reading = new WasmDefaultInstructionVisitor() {
        @Override
        public void visit(WasmCall instruction) {
            found(instruction.getFunction());
        }

        @Override
        public void visit(WasmGetGlobal instruction) {
            if (!waits(instruction, instruction.getGlobal())) found(instruction.getGlobal());
        }

        @Override
        public void visit(WasmSetGlobal instruction) {
            found(instruction.getGlobal());
        }

        @Override
        public void visit(WasmFunctionReference instruction) {
            if (!waits(instruction, instruction.getFunction())) found(instruction.getFunction());
        }

        @Override
        public void visit(WasmInt32Constant instruction) {
            waits(instruction, instruction);
        }

        @Override
        public void visit(WasmStructGet instruction) {
            Field field = Field.of(instruction.getType(), instruction.getFieldIndex());
            if (!read.add(field)) return;
            for (Object one : waiting.getOrDefault(field, Set.of())) found(one);
        }
    };

    /** Something and a value, the one kept in a field of the other: neither is wanted until the field is read. */
    private boolean waits(WasmInstruction part, Object meant) {
        Optional<WasmStructSet> note =
                note(part).or(() -> part.getNext() == null ? Optional.empty() : note(part.getNext()));
        if (note.isEmpty()) return false;
        notes.add(note.get());
        Field field = Field.of(note.get());
        if (read.contains(field)) return false;
        waiting.computeIfAbsent(field, none -> new HashSet<>()).add(meant);
        return true;
    }

    /** Where {@code value} is what a field is set to, and what has the field is plainly named before it. */
    private static Optional<WasmStructSet> note(WasmInstruction value) {
        boolean plain = value instanceof WasmGetGlobal
                || value instanceof WasmFunctionReference
                || value instanceof WasmInt32Constant;
        WasmInstruction of = value.getPrevious();
        boolean named = of instanceof WasmGetGlobal || of instanceof WasmGetLocal;
        return plain && named && value.getNext() instanceof WasmStructSet set ? Optional.of(set) : Optional.empty();
    }

    private void leaveOut() {
        for (WasmStructSet set : notes) {
            if (read.contains(Field.of(set))) continue;
            WasmInstruction value = set.getPrevious();
            WasmInstruction of = value.getPrevious();
            set.delete();
            value.delete();
            of.delete();
        }
        module.functions.removeIf(function -> !reached.contains(function));
        module.globals.removeIf(global -> !reached.contains(global));
    }
}
