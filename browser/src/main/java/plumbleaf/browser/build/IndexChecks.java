package plumbleaf.browser.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.teavm.backend.wasm.WasmFunctionTypes;
import org.teavm.backend.wasm.model.WasmFunction;
import org.teavm.backend.wasm.model.WasmLocal;
import org.teavm.backend.wasm.model.WasmType;
import org.teavm.backend.wasm.model.instruction.WasmArrayLength;
import org.teavm.backend.wasm.model.instruction.WasmBlock;
import org.teavm.backend.wasm.model.instruction.WasmBranch;
import org.teavm.backend.wasm.model.instruction.WasmCall;
import org.teavm.backend.wasm.model.instruction.WasmGetLocal;
import org.teavm.backend.wasm.model.instruction.WasmInstruction;
import org.teavm.backend.wasm.model.instruction.WasmInstructionList;
import org.teavm.backend.wasm.model.instruction.WasmInt32Constant;
import org.teavm.backend.wasm.model.instruction.WasmIntBinary;
import org.teavm.backend.wasm.model.instruction.WasmIntBinaryOperation;
import org.teavm.backend.wasm.model.instruction.WasmIntType;
import org.teavm.backend.wasm.model.instruction.WasmSetLocal;
import org.teavm.backend.wasm.model.instruction.WasmTeeLocal;
import org.teavm.backend.wasm.model.instruction.WasmThrow;

/** Checks of an index: {@code block { block { index; 0; less; branch }; index; array; length; less; branch; call; throw }; index} becomes {@code index; array; length; call}. */
final class IndexChecks {
    /** Of the steps that ask whether an index is below zero, how many come before it is named again. */
    private static final int BELOW_ZERO = 4;

    private IndexChecks() {}

    static void share(WasmBlock block, WasmFunctionTypes types, Map<Object, WasmFunction> checks) {
        WasmInstruction again = block.getNext();
        WasmInstruction fault = block.getBody().getLast().getPrevious();
        WasmInstruction branch = fault.getPrevious();
        if (branch instanceof WasmBlock inner && inner.getPrevious() == null)
            branch = inner.getBody().getLast();
        boolean goesOn = branch instanceof WasmBranch way && way.getTarget().equals(block.getBody());
        if (again == null || !goesOn || !(branch.getPrevious() instanceof WasmIntBinary less)) return;
        List<WasmInstruction> limit = new ArrayList<>();
        if (less.getPrevious() instanceof WasmArrayLength) {
            WasmInstruction index = branch.getOwner().getFirst();
            if (!branch.getOwner().equals(block.getBody()))
                for (int i = 0; i < BELOW_ZERO; i++) index = index.getNext();
            for (WasmInstruction one = index.getNext(); !one.equals(less); one = one.getNext()) limit.add(one);
        } else if (!(less.getPrevious() instanceof WasmInt32Constant)) return;
        boolean within = !limit.isEmpty();
        WasmFunction check = checks.computeIfAbsent(within, none -> check(within, (WasmCall) fault, types));
        block.delete();
        WasmInstruction at = again;
        for (WasmInstruction one : limit) {
            one.delete();
            at.insertNext(one);
            at = one;
        }
        at.insertNext(new WasmCall(check));
        keep(again);
    }

    /** {@code set v; get v} is one step. */
    private static void keep(WasmInstruction again) {
        if (again instanceof WasmGetLocal get
                && again.getPrevious() instanceof WasmSetLocal set
                && set.getLocal().equals(get.getLocal())) {
            again.insertPrevious(new WasmTeeLocal(set.getLocal()));
            set.delete();
            again.delete();
        }
    }

    /** @param within whether it is held against a length, as a number without sign, which is more than any length where it is below zero; else only against zero */
    private static WasmFunction check(boolean within, WasmCall fault, WasmFunctionTypes types) {
        WasmFunction check = new WasmFunction(
                within
                        ? types.of(WasmType.INT32, WasmType.INT32, WasmType.INT32)
                        : types.of(WasmType.INT32, WasmType.INT32));
        WasmLocal index = new WasmLocal(WasmType.INT32);
        check.add(index);
        WasmBlock block = new WasmBlock(false);
        WasmInstructionList body = block.getBody();
        body.add(new WasmGetLocal(index));
        if (within) {
            WasmLocal length = new WasmLocal(WasmType.INT32);
            check.add(length);
            body.add(new WasmGetLocal(length));
        } else body.add(new WasmInt32Constant(0));
        body.add(new WasmIntBinary(
                WasmIntType.INT32, within ? WasmIntBinaryOperation.LT_UNSIGNED : WasmIntBinaryOperation.GE_SIGNED));
        body.add(new WasmBranch(body));
        body.add(new WasmCall(fault.getFunction()));
        body.add(new WasmThrow(((WasmThrow) fault.getNext()).getTag()));
        check.getBody().add(block);
        check.getBody().add(new WasmGetLocal(index));
        return check;
    }
}
