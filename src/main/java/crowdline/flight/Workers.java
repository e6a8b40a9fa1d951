package crowdline.flight;

import java.util.function.IntConsumer;

/** Does many independent pieces of work. */
@FunctionalInterface
public interface Workers {
    /** One piece after another, on the thread that asks. */
    Workers ALONE = (count, work) -> {
        for (int i = 0; i < count; i++) {
            work.accept(i);
        }
    };

    /**
     * Does each piece once, in any order and on any thread, and is back when all are done.
     *
     * @param count how many pieces, 0 or more
     * @param work does the piece of a number, from 0
     */
    void each(int count, IntConsumer work);
}
