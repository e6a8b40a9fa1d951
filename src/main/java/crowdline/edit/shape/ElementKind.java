package crowdline.edit.shape;

import crowdline.show.figure.Element;
import crowdline.show.figure.Element.FlickKind;
import crowdline.show.figure.Element.RollStyle;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.SlideKind;
import crowdline.show.figure.Element.Until;
import crowdline.show.figure.Element.Way;
import crowdline.show.figure.ReversalWay;
import crowdline.show.figure.SpinKind;
import java.util.Arrays;
import java.util.List;

/** What an element can be, and what it is when it is new: ordinary numbers to be changed, common practice, no source. */
public enum ElementKind {
    LINE("straight line", new Element.Line(Until.SECONDS, 2, 1)),
    ARC("pull or push", new Element.Arc(Way.PULL, 90.0, null, Size.LOAD_G, 3, 1)),
    ROLL("roll", new Element.Roll(RollStyle.AILERON, Side.LEFT, 360, null, 0, 0.5, 1)),
    TURN("turn", new Element.Turn(Side.LEFT, 180, 45, 0, 0, 1)),
    REVERSAL("roll to the other bank", new Element.Reversal(ReversalWay.UNDER, 1)),
    FLICK("flick", new Element.Flick(FlickKind.POSITIVE, Side.LEFT, 360, 1)),
    SPIN("spin", new Element.Spin(SpinKind.UPRIGHT, Side.LEFT, 1, 0)),
    PIVOT("pivot", new Element.Pivot(Side.LEFT, 1)),
    SLIDE("tail slide", new Element.Slide(SlideKind.WHEELS_DOWN, 0)),
    HOVER_ROLL("hover roll", new Element.HoverRoll(4, 1)),
    TUMBLE("tumble", new Element.Tumble(Side.LEFT, 1, 1)),
    RUN("run to a place", new Element.Run(0, 500, 100, 1)),
    REPOSITION("turn back to a place", new Element.Reposition(0, 500, 100, 45, 1));

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // a record whose lists are copied
    private final Element fresh;

    ElementKind(String word, Element fresh) {
        this.word = word;
        this.fresh = fresh;
    }

    /** Such as "straight line". */
    public String word() {
        return word;
    }

    /** One with ordinary numbers. */
    public Element fresh() {
        return fresh;
    }

    /** What an element is. */
    public static ElementKind of(Element element) {
        return Arrays.stream(values())
                .filter(kind -> kind.fresh.getClass().equals(element.getClass()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no kind for " + element));
    }

    static List<String> words() {
        return Arrays.stream(values()).map(ElementKind::word).toList();
    }
}
