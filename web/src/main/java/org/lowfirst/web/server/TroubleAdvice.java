package org.lowfirst.web.server;

import org.lowfirst.app.journal.JournalUnavailable;
import org.lowfirst.web.view.NoSuchThing;
import org.lowfirst.web.view.Screens;
import org.lowfirst.web.view.Trouble;
import org.lowfirst.web.words.StorageWords;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.ServletRequestBindingException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.NoHandlerFoundException;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.resource.NoResourceFoundException;

/** Turns what no page has an answer for into a page that says what is wrong and what to do. */
@ControllerAdvice
public class TroubleAdvice {

    private static final Logger LOG = LoggerFactory.getLogger(TroubleAdvice.class);

    private final Screens screens;

    public TroubleAdvice(Screens screens) {
        this.screens = screens;
    }

    @ExceptionHandler({NoResourceFoundException.class, NoHandlerFoundException.class})
    View notFound() {
        return screens.trouble(Trouble.NOT_FOUND);
    }

    @ExceptionHandler(NoSuchThing.class)
    View noSuchThing() {
        return screens.trouble(Trouble.NOT_FOUND);
    }

    @ExceptionHandler(HttpRequestMethodNotSupportedException.class)
    View wrongMethod() {
        return screens.trouble(Trouble.WRONG_METHOD);
    }

    @ExceptionHandler({ServletRequestBindingException.class, MethodArgumentTypeMismatchException.class})
    View notUnderstood() {
        return screens.trouble(Trouble.NOT_UNDERSTOOD);
    }

    @ExceptionHandler(JournalUnavailable.class)
    View unavailable(JournalUnavailable unavailable) {
        LOG.error("The database could not be used.", unavailable);
        return screens.trouble(Trouble.NO_DATABASE, StorageWords.of(unavailable.trouble(), screens.words()));
    }

    /** The one place where anything is caught: the edge of the program. */
    @ExceptionHandler(Exception.class)
    View failed(Exception unforeseen) {
        LOG.error("A page could not be made.", unforeseen);
        return screens.trouble(Trouble.FAILED);
    }
}
