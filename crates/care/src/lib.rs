//! From the state of a palm to findings and plans: cut plan, asked-for cut, holds.
