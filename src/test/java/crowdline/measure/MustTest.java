package crowdline.measure;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class MustTest {

    @Test
    void whatIsAllowedPasses() {
        assertThatCode(() -> {
                    Must.beFinite("x", -Double.MAX_VALUE);
                    Must.beFiniteIfKnown("x", null);
                    Must.bePositive("x", Double.MIN_VALUE);
                    Must.beAtLeast("x", 0.5, 0.5);
                    Must.beWithin("x", 1, 1, 2);
                    Must.beWithin("x", 2, 1, 2);
                    Must.beTime("x", 0);
                    Must.beIndex("x", 0);
                    Must.beSaid("x", ".");
                })
                .doesNotThrowAnyException();
    }

    @Test
    void whatIsNotIsRefusedWithItsValueAndWhatIsAllowed() {
        refused(() -> Must.beFinite("windKt", Double.NaN), "windKt is NaN; it must be a number");
        refused(() -> Must.beFiniteIfKnown("windKt", 1 / 0.0), "windKt is Infinity; it must be a number");
        refused(() -> Must.bePositive("massKg", 0), "massKg is 0.0; it must be above 0");
        refused(() -> Must.bePositive("massKg", Double.NaN), "massKg is NaN; it must be a number");
        refused(() -> Must.beAtLeast("breathS", 0.4, 0.5), "breathS is 0.4; it must be 0.5 or more");
        refused(() -> Must.beAtLeast("breathS", 1 / 0.0, 0.5), "breathS is Infinity; it must be 0.5 or more");
        refused(() -> Must.beWithin("latDeg", 90.1, -90, 90), "latDeg is 90.1; it must be a number from -90.0 to 90.0");
        refused(
                () -> Must.beWithin("latDeg", Double.NaN, -90, 90),
                "latDeg is NaN; it must be a number from -90.0 to 90.0");
        refused(() -> Must.beTime("atS", -0.1), "atS is -0.1; it must be 0 or more seconds");
        refused(() -> Must.beTime("atS", 1 / 0.0), "atS is Infinity; it must be 0 or more seconds");
        refused(() -> Must.beIndex("figure", -1), "figure is -1; it must be 0 or more");
        refused(() -> Must.beSaid("title", " \n"), "title is empty; it needs some text");
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }
}
