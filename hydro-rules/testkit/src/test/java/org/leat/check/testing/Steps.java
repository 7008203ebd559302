package org.leat.check.testing;

import java.util.concurrent.atomic.AtomicLong;
import org.pitest.reloc.asm.ClassReader;
import org.pitest.reloc.asm.ClassVisitor;
import org.pitest.reloc.asm.ClassWriter;
import org.pitest.reloc.asm.Label;
import org.pitest.reloc.asm.MethodVisitor;
import org.pitest.reloc.asm.Opcodes;

/**
 * Counts the steps of changed code, calls and jumps, and ends it once it has taken more than any rule takes: so a change that
 * would never end is noticed by what it did and not by a clock.
 */
public final class Steps {

    private static final long MOST = 10_000_000;
    private static final AtomicLong LEFT = new AtomicLong(MOST);

    /** More steps than a rule takes. */
    static final class Exhausted extends Error {

        private static final long serialVersionUID = 1;

        Exhausted() {
            super("more than " + MOST + " steps", null, false, false);
        }
    }

    private Steps() {}

    /** Before code is asked. */
    static void start() {
        LEFT.set(MOST);
    }

    /** Called by counted code. */
    public static void taking() {
        if (LEFT.getAndDecrement() <= 0) {
            throw new Exhausted();
        }
    }

    /** {@return a class that counts its steps, else the same} */
    static byte[] counted(byte[] bytes) {
        ClassWriter to = new ClassWriter(0);
        new ClassReader(bytes).accept(new Counting(to), 0);
        return to.toByteArray();
    }

    private static final class Counting extends ClassVisitor {

        Counting(ClassVisitor to) {
            super(Opcodes.ASM9, to);
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] exceptions) {
            return new MethodVisitor(Opcodes.ASM9, super.visitMethod(access, name, descriptor, signature, exceptions)) {

                @Override
                public void visitCode() {
                    super.visitCode();
                    step();
                }

                @Override
                public void visitJumpInsn(int opcode, Label label) {
                    step();
                    super.visitJumpInsn(opcode, label);
                }

                private void step() {
                    super.visitMethodInsn(
                            Opcodes.INVOKESTATIC, Steps.class.getName().replace('.', '/'), "taking", "()V", false);
                }
            };
        }
    }
}
