package crowdline.edit.act;

import crowdline.edit.Change;
import crowdline.show.Show;

/** Something to be done to a show, whatever the show is by then. It takes up to some hundred milliseconds. */
@FunctionalInterface
public interface Edit {
    /**
     * The show with it done.
     *
     * @throws CannotBe if it cannot be, in a sentence
     */
    Change of(Show show) throws CannotBe;

    /** The same, with what a value refuses said as what cannot be. */
    default Edit refusing() {
        return show -> {
            try {
                return of(show);
            } catch (IllegalArgumentException e) {
                throw new CannotBe(String.valueOf(e.getMessage()));
            }
        };
    }
}
