//! What a visit takes: minutes, debris, money; and what logged times teach.
