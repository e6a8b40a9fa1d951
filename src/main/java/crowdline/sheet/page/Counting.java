package crowdline.sheet.page;

/** Hears how far long work is. It may throw {@link java.util.concurrent.CancellationException} to stop it. */
public interface Counting {
    /** Nobody listens. */
    Counting UNHEARD = (number, all) -> {};

    void is(int number, int all);
}
