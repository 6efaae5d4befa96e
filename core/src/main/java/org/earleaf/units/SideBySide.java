// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;

/**
 * How pieces of work that share nothing are done: one after the other, on the threads of a pool, on many machines. Whoever
 * asks for an answer hands it in; what comes out is the same, piece by piece, in the order of the pieces.
 */
public interface SideBySide {
    /** One after the other, on the thread that asks. */
    SideBySide IN_TURN = new SideBySide() {
        @Override
        public <A, B> List<B> each(List<A> pieces, Function<? super A, ? extends B> work) {
            return pieces.stream().<B>map(work).toList();
        }
    };

    /** The results, in the order of the pieces; what one piece throws is thrown. */
    <A, B> List<B> each(List<A> pieces, Function<? super A, ? extends B> work);

    /** On the threads of a pool; a piece may itself be done in pieces. */
    static SideBySide in(ForkJoinPool pool) {
        return new SideBySide() {
            @Override
            public <A, B> List<B> each(List<A> pieces, Function<? super A, ? extends B> work) {
                if (pieces.size() < 2) {
                    return IN_TURN.each(pieces, work);
                }
                List<ForkJoinTask<Piece<B>>> tasks = pieces.stream()
                        .map(piece -> ForkJoinTask.adapt((Callable<Piece<B>>) () -> Piece.of(piece, work)))
                        .toList();
                if (ForkJoinTask.getPool() == pool) {
                    ForkJoinTask.invokeAll(tasks);
                } else {
                    pool.invoke(ForkJoinTask.adapt(() -> ForkJoinTask.invokeAll(tasks)));
                }
                return tasks.stream().map(task -> task.join().get()).toList();
            }
        };
    }
}
