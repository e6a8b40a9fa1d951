package crowdline.console.live.now;

import crowdline.console.paint.Mark;
import crowdline.console.path.SkyView;
import crowdline.sight.SideView;
import org.jspecify.annotations.Nullable;

/**
 * What is being flown.
 *
 * @param caption such as "Flying now"
 * @param state a state that changes what the row means, such as holding or off plan, or null
 * @param name the figure's name; two names with "or" between them when nobody can tell yet
 * @param look one sentence of what to look for
 * @param leftShare share of the figure's time that is left, 0 to 1
 * @param left the time left in words, such as "4 s"; empty if it has no end
 * @param side the act's path with the aircraft on it
 * @param seen what there is to see in the figure now and next, or null where no figure is flown
 * @param sketch how it usually looks where it has no path of its own; empty where nobody knows
 */
public record NowView(
        String caption,
        @Nullable Mark state,
        String name,
        String look,
        double leftShare,
        String left,
        SideView side,
        @Nullable SeenView seen,
        SkyView sketch) {

    /** Where no figure is flown. */
    public NowView(
            String caption,
            @Nullable Mark state,
            String name,
            String look,
            double leftShare,
            String left,
            SideView side) {
        this(caption, state, name, look, leftShare, left, side, null);
    }

    /** Without a sketch. */
    public NowView(
            String caption,
            @Nullable Mark state,
            String name,
            String look,
            double leftShare,
            String left,
            SideView side,
            @Nullable SeenView seen) {
        this(caption, state, name, look, leftShare, left, side, seen, SkyView.NONE);
    }

    /** With how it usually looks. */
    NowView sketched(SkyView how) {
        return new NowView(caption, state, name, look, leftShare, left, side, seen, how);
    }

    /** With the figure at an index of the variant coming next, or null for none. */
    public NowView next(@Nullable Integer index) {
        return new NowView(
                caption, state, name, look, leftShare, left, side.withNext(index == null ? -1 : index), seen, sketch);
    }

    /** With other words in large type, and under them. */
    public NowView saying(String large, String under) {
        return new NowView(caption, state, large, under, leftShare, left, side, seen, sketch);
    }

    public NowView {
        if (!(leftShare >= 0 && leftShare <= 1)) {
            throw new IllegalArgumentException("leftShare is " + leftShare + "; it must be from 0 to 1");
        }
    }
}
