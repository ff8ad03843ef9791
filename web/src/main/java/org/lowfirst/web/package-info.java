@NullMarked
package org.lowfirst.web;

import org.jspecify.annotations.NullMarked;
