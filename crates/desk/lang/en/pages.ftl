### pages
