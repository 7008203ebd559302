package org.example.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class QuoteTest {

    private final Quote quote = new Quote();

    @Test
    void a_wider_pipe_brings_more() {
        assertTrue(quote.offer(63, 17).watts() > quote.offer(50, 26).watts());
        assertTrue(quote.offer(50, 26).watts() > quote.offer(40, 26).watts());
    }

    @Test
    void a_thin_wall_is_objected_to() {
        assertFalse(quote.offer(50, 41).objections().isEmpty());
    }

    @Test
    void what_the_counter_does_not_know_is_counted() {
        assertTrue(quote.offer(63, 17).notJudged() > 0);
    }

    @Test
    void the_same_question_gets_the_same_answer() {
        assertEquals(quote.offer(63, 17), new Quote().offer(63, 17));
    }
}
