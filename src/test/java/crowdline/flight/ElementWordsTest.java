package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ElementWordsTest {
    private static Map<Element, String> words() {
        Map<Element, String> words = new LinkedHashMap<>();
        words.put(new Element.Line(Until.SECONDS, 3, 1), "line");
        words.put(new Element.Arc(Way.PULL, 90.0, null, Size.LOAD_G, 4, 1), "pull");
        words.put(new Element.Arc(Way.PUSH, 90.0, null, Size.LOAD_G, -3, 1), "push");
        words.put(roll(RollStyle.AILERON), "roll");
        words.put(roll(RollStyle.SLOW), "slow roll");
        words.put(roll(RollStyle.HESITATION), "hesitation roll");
        words.put(roll(RollStyle.BARREL), "barrel roll");
        words.put(new Element.Flick(FlickKind.POSITIVE, Side.LEFT, 360, 1), "flick");
        words.put(new Element.Flick(FlickKind.NEGATIVE, Side.LEFT, 360, 1), "negative flick");
        words.put(new Element.Spin(SpinKind.UPRIGHT, Side.LEFT, 2, 0), "spin");
        words.put(new Element.Spin(SpinKind.INVERTED, Side.LEFT, 2, 0), "inverted spin");
        words.put(new Element.Spin(SpinKind.FLAT, Side.LEFT, 2, 0), "flat spin");
        words.put(new Element.Spin(SpinKind.INVERTED_FLAT, Side.LEFT, 2, 0), "inverted flat spin");
        words.put(new Element.Pivot(Side.LEFT, 1), "pivot");
        words.put(new Element.Slide(SlideKind.WHEELS_UP, 0), "slide");
        words.put(new Element.HoverRoll(3, 1), "hover roll");
        words.put(new Element.Tumble(Side.LEFT, 2, 1), "tumble");
        words.put(new Element.Turn(Side.LEFT, 90, 45, 0, 0, 1), "turn");
        words.put(new Element.Reversal(ReversalWay.UNDER, 1), "roll underneath");
        words.put(new Element.Reversal(ReversalWay.OVER, 1), "roll back over the top");
        words.put(new Element.Turn(Side.LEFT, 90, 45, 20, 0, 1), "wing-over");
        words.put(new Element.Turn(Side.LEFT, 90, 45, 0, -1, 1), "rolling turn");
        words.put(new Element.Turn(Side.LEFT, 90, 45.0, 20, true, 0, false, 1), "climbing turn");
        words.put(new Element.Run(0, 500, 120, 1), "run");
        words.put(new Element.Reposition(0, 500, 120, 45, 1), "reposition");
        return words;
    }

    private static Element roll(RollStyle style) {
        return new Element.Roll(style, Side.LEFT, 360, 4.0, 4, 0.5, 1);
    }

    @Test
    void elementIsCalledWhatItIs() {
        words().forEach((element, word) -> assertThat(ElementWords.of(element)).isEqualTo(word));
    }

    @Test
    void everyElementHasAWord() {
        Set<Class<?>> named = words().keySet().stream().map(Object::getClass).collect(Collectors.toSet());

        assertThat(named).containsExactlyInAnyOrder(Element.class.getPermittedSubclasses());
    }
}
